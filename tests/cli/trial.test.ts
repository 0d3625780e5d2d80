import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import type { TrialAnalysis } from '../../src/records/trial.ts';
import type { TrialDesign } from '../../src/records/trialDesign.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { sampleTestStones } from '../../src/sample/saltreach/testStone/sampleTestStones.ts';
import { startServer } from '../../src/server/startServer.ts';
import { squareName } from '../../src/studio/trials/places/patchName.ts';
import { publishedRows } from '../published/rows.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

/** The words of a PDF, by poppler's own tool. */
async function pdfText(path: string): Promise<string> {
  return (await promisify(execFile)('pdftotext', [path, '-'])).stdout;
}

const columns = ['--response', 'yield', '--block', 'block', '--whole', 'variety', '--sub', 'nitrogen'];

/** The published oats experiment, as a table; its source stands in tests/published/data/trials.json. */
function oatsTable(): string {
  const { inputs } = publishedRows('trials.json').find((row) => row.id === 'splitplot-oats')!;
  const lines = (inputs.rows as (string | number)[][]).map((row) => row.join(','));
  return `block,variety,nitrogen,yield\r\n${lines.join('\r\n')}\r\n`;
}

async function analysed(table: string, ...words: readonly string[]): Promise<TrialAnalysis> {
  const ended = await stonetone('trial', 'analyse', '--csv', await bench.write('t.csv', table), ...words);
  expect(ended.complained).toBe('');
  expect(ended.status).toBe(0);
  return JSON.parse(ended.said) as TrialAnalysis;
}

describe('stonetone trial analyse', () => {
  it('tests the whole-plot treatment against strips, not patches', async () => {
    const { anova, patches } = await analysed(oatsTable(), ...columns);
    expect(patches).toBe(72);
    expect(anova.map((line) => line.term)).toEqual(['variety', 'nitrogen', 'variety × nitrogen']);
    // 5.04 is what the wrong error would give.
    expect(anova[0]!.F).toBeCloseTo(1.485340379, 6);
    expect(anova[0]!.denDf).toBeCloseTo(10, 6);
  });

  it('None is a level like any other, and what the others are compared with', async () => {
    const stones = ['S-01', 'S-02', 'S-03'];
    const table = stones.flatMap((stone, i) =>
      ['None', 'gum', 'tannic'].flatMap((etch, k) =>
        ['crayon', 'wash'].map(
          (medium, j) => `${stone},${etch},${medium},${0.3 + 0.1 * k + 0.05 * j + 0.01 * ((i * k + j) % 3)}`,
        ),
      ),
    );
    const { differences, estimates } = await analysed(
      ['stone,etch,medium,tone', ...table].join('\n'),
      ...['--response', 'tone', '--block', 'stone', '--whole', 'etch', '--sub', 'medium'],
    );
    const ofEtch = differences.filter((one) => one.term === 'etch');
    expect(ofEtch.map((one) => [one.level, one.against])).toEqual([
      ['gum', 'None'],
      ['tannic', 'None'],
    ]);
    expect(ofEtch.every((one) => one.correction === 'Dunnett')).toBe(true);
    expect(estimates.find((one) => one.level === 'None')).toMatchObject({ patches: 6, units: 3 });
  });

  it('a test stone where every medium got its own etch says that no cause can be assigned', async () => {
    const { anova, warnings } = await analysed(
      'stone,etch,medium,tone\nT-1,gum,crayon,.3\nT-1,gum,crayon,.31\nT-1,tannic,wash,.5\nT-1,tannic,wash,.52\n',
      ...['--response', 'tone', '--block', 'stone', '--whole', 'etch', '--sub', 'medium'],
    );
    expect(warnings.map((one) => one.code)).toEqual(
      expect.arrayContaining(['same-split', 'cells-missing', 'no-replicate', 'one-block']),
    );
    expect(anova.every((line) => line.F === null && line.p === null)).toBe(true);
  });

  it('patches that could not be read are left out, and said', async () => {
    const table = oatsTable().replace(',111\r', ',\r');
    const { patches, warnings } = await analysed(table, ...columns);
    expect(patches).toBe(71);
    expect(warnings[0]).toMatchObject({ code: 'left-out', message: expect.stringMatching(/line 2\b/) });
  });

  it.each([
    ['a column that is not there', oatsTable(), columns.with(1, 'weight'), /no column weight; .*yield/],
    ['a reading that is no number', 'block,v,y\nI,a,1\nI,b,many\n', null, /line 3 has "many" for y/],
    ['a blank treatment', 'block,v,y\nI,,1\n', null, /line 2 names no v/],
    ['a row with a cell too many', 'block,v,y\nI,a,1,2\n', null, /line 2/i],
    ['no rows', 'block,v,y\n', null, /no rows/],
    ['only blanks', 'block,v,y\nI,a,\n', null, /every y is blank/],
  ])('%s is told with its place', async (_, table, words, mentions) => {
    const file = await bench.write('bad.csv', table);
    const given = words ?? ['--response', 'y', '--block', 'block', '--sub', 'v'];
    const ended = await stonetone('trial', 'analyse', '--csv', file, ...given);
    expectFailure(ended, 'trial-table-unreadable', mentions);
  });

  it('needs a treatment, and knows one thing to do', async () => {
    expectFailure(
      await stonetone('trial', 'analyse', '--csv', 'x.csv', '--response', 'y'),
      'argument-missing',
      /--whole or --sub/,
    );
    expectFailure(await stonetone('trial', 'guess'), 'argument-unknown', /guess/);
    expectFailure(await stonetone('trial'), 'argument-missing', /design, read or analyse/);
  });
});

describe('stonetone trial design', () => {
  const wish = {
    stone: { widthMm: 300, heightMm: 400 },
    stones: 2,
    whole: { name: 'etch', levels: ['None', 'gum'] },
    sub: { name: 'medium', levels: ['crayon', 'wash', '=pen'] },
    control: 'None',
    wanted: 0.1,
  };

  it('writes a design that tells no treatment, the list that does, and a tracing sheet at true size', async () => {
    const out = bench.path('trial');
    const file = await bench.write('spec.json', JSON.stringify(wish));
    const ended = await stonetone('trial', 'design', file, '--out', out);
    expect(ended.complained).toBe('');
    expect(ended.said).toMatch(/^12 patches of 40 mm on 2 stones\./);
    expect(ended.said).toMatch(/At middle scatter, noticed 8 times in 10: etch a difference of/);
    expect(ended.said).toMatch(/Two stones alike are usually few/);
    const design = await readFile(join(out, 'design.json'), 'utf8');
    expect(JSON.parse(design).patches[0]).toEqual({
      code: 'stone 1, row 1, first',
      stone: 1,
      strip: '1',
      row: 1,
      column: 1,
      polygonMm: expect.any(Array),
    });
    const list = await readFile(join(out, 'list.csv'), 'utf8');
    expect(list).toMatch(/^code,etch,medium\r\n"stone 1, row 1, first",/);
    // A table program would take the level for a formula.
    expect(list).toContain("'=pen");
    expect((await readFile(join(out, 'tracing.pdf'))).toString('latin1', 0, 5)).toBe('%PDF-');
    const filled = (await readFile(join(out, 'readings.csv'), 'utf8')).trim().split('\r\n');
    expect(filled).toHaveLength(13);
  });

  it.each([
    // blocks, patches of each, who lies in a block: every medium of one etch, or every combination
    ['split-plot', { stripRepeats: 2 }, 8, 3, 'one etch'],
    ['blocked', { blocks: 'both' }, 8, 6, 'all'],
    ['row-column', { patchRepeats: 6 }, 12, 6, 'all'],
  ] as const)('a %s trial is right in every file', async (layout, more, blocks, each, who) => {
    const out = bench.path(`trial-${layout}`);
    const file = await bench.write(`${layout}.json`, JSON.stringify({ ...wish, ...more, layout, seed: 11 }));
    const ended = await stonetone('trial', 'design', file, '--out', out);
    expect(ended.complained).toBe('');
    expect(ended.said).toMatch(/Cheapest that notices 0\.1: .*minutes of hands/);
    const text = async (name: string) => readFile(join(out, name), 'utf8');
    const design = JSON.parse(await text('design.json')) as TrialDesign;
    const lines = async (name: string) => (parse(await text(name)) as string[][]).slice(1);
    const listed = await lines('list.csv');
    expect(design.seal).toBe(
      createHash('sha256')
        .update(await text('list.csv'))
        .digest('hex'),
    );
    expect(listed.map(([code]) => code)).toEqual(design.patches.map(({ code }) => code));
    expect(listed).toHaveLength(blocks * each);
    const inBlocks = new Map<string, string[][]>();
    for (const [index, { stone, strip }] of design.patches.entries()) {
      const block = `${stone}${strip}`;
      inBlocks.set(block, [...(inBlocks.get(block) ?? []), listed[index]!.slice(1)]);
    }
    expect(inBlocks.size).toBe(blocks);
    for (const own of inBlocks.values()) {
      const combinations = new Set(own.map((got) => got.join()));
      expect(combinations.size).toBe(each);
      if (who === 'one etch') expect(new Set(own.map(([etch]) => etch)).size).toBe(1);
    }
    if (layout === 'row-column')
      for (const stone of [1, 2])
        for (let column = 1; column <= each; column++) {
          const own = design.patches.filter((patch) => patch.stone === stone && patch.column === column);
          const inColumn = listed.filter(([code]) => own.some((patch) => patch.code === code));
          expect(new Set(inColumn.map((got) => got.slice(1).join())).size).toBe(6);
        }
    // Every patch once a treatment, media before etches, a strip's etch at once.
    const steps = await lines('steps.csv');
    const given = steps.flatMap(([, stone, treatment, level, , codes]) =>
      codes!.split('; ').map((code) => [stone, code, treatment, level].join()),
    );
    expect(given.toSorted()).toEqual(
      listed
        .flatMap(([code, etch, medium]) => [
          `${code![6]},${code},etch,${etch}`,
          `${code![6]},${code},medium,${medium}`,
        ])
        .toSorted(),
    );
    const ofFirst = steps.filter(([, stone]) => stone === '1').map(([, , treatment]) => treatment);
    expect(ofFirst.lastIndexOf('medium')).toBeLessThan(ofFirst.indexOf('etch'));
    expect(ofFirst.filter((treatment) => treatment === 'etch')).toHaveLength(layout === 'split-plot' ? 4 : 2);
    const tracing = await pdfText(join(out, 'tracing.pdf'));
    for (const { row, column } of design.patches) expect(tracing).toContain(squareName(row, column));
    expect(tracing).not.toMatch(/crayon|wash|gum/);
  });

  it.each([
    [
      'too many patches',
      { ...wish, patchRepeats: 12, stripRepeats: 6 },
      'trial-does-not-fit',
      /432 patches of 12 mm/,
    ],
    ['a control that is no level', { ...wish, control: 'tea' }, 'trial-wish-malformed', /none of the levels/],
    [
      'a level twice',
      { ...wish, sub: { name: 'medium', levels: ['a', 'a'] } },
      'trial-wish-malformed',
      /twice/,
    ],
    ['no treatment', { stone: wish.stone }, 'trial-wish-malformed', /sub/],
  ] as const)('%s is told, and nothing is written', async (_, given, code, mentions) => {
    const out = bench.path('nothing');
    const file = await bench.write('bad.json', JSON.stringify(given));
    expectFailure(await stonetone('trial', 'design', file, '--out', out), code, mentions);
    expect(existsSync(out)).toBe(false);
  });

  it('is weighed by how the patches of a room scatter, while that room is served', async () => {
    const data = bench.path('room');
    const served = await startServer({
      dataFolder: data,
      port: 0,
      studio: sampleStudio(),
      testStones: sampleTestStones,
    });
    if (!served.ok) throw new Error(served.error.message);
    onTestFinished(() => served.value.stop());
    const answerOf = async () =>
      (await fetch(`${served.value.address}/api/test-stones/${sampleTestStones.readId}/reading`)).text();
    await expect.poll(answerOf, { timeout: 20_000 }).toContain('"hold":"lost"');
    const file = await bench.write('of-room.json', JSON.stringify({ ...wish, wanted: null }));
    const designed = async (folder: string) =>
      stonetone('trial', 'design', file, '--out', bench.path(`out-${folder}`), '--data', bench.path(folder));
    const ended = await designed('room');
    expect(ended.complained).toBe('');
    expect(ended.said).toMatch(
      /This room's own scatter, by 1 test stone: stones \d\.\d{3} \(unknown here: from memory\), strips \d\.\d{3}, patches/,
    );
    expect(ended.said).toContain("At this room's scatter, noticed 8 times in 10");
    expectFailure(await designed('no-room'), 'data-folder-missing', /no-room/);
    expect(existsSync(bench.path('out-no-room'))).toBe(false);
  });
});
