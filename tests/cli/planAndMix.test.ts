import { existsSync, readFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';
import type { EtchPlan } from '../../src/records/etch.ts';
import type { MixtureAnswer } from '../../src/records/mixture.ts';
import { tannicTable } from '../../src/studio/etch/tannicTable.ts';
import { pdfText } from '../gallery/popplerTools.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const post = {
  id: 'post',
  name: 'Mooring post',
  medium: 'crayon-1',
  deposit: 'dark',
  polygonMm: [
    [60, 60],
    [100, 60],
    [100, 200],
    [60, 200],
  ],
};
const sky = {
  id: 'sky',
  name: 'Sky',
  medium: 'tusche-water',
  deposit: 'light',
  polygonMm: [
    [120, 40],
    [340, 40],
    [340, 160],
    [120, 160],
  ],
};
const work = {
  stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour: 'grey' },
  zones: [post, sky],
  table: 'tannic',
  people: 2,
};
const written = (content: unknown) => bench.write('work.json', JSON.stringify(content));

describe('stonetone plan', () => {
  it('writes the plan, its map and its step sheet, and says amounts and schedule in one line', async () => {
    const out = bench.path('planned');
    const ended = await stonetone('plan', await written(work), '--out', out);
    expect(ended.status, ended.complained).toBe(0);
    expect(ended.said).toMatch(/ml .+\.\nWritten to .+\.\n$/);
    expect((await readdir(out)).sort()).toEqual(['map.pdf', 'plan.json', 'steps.pdf']);
    for (const name of ['map.pdf', 'steps.pdf'])
      expect(readFileSync(`${out}/${name}`).subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(await pdfText(readFileSync(`${out}/steps.pdf`))).toMatch(/step sheet · work/);
    const plan = JSON.parse(readFileSync(`${out}/plan.json`, 'utf8')) as EtchPlan;
    expect(plan.schema).toBe('stonetone/plan/1');
    expect(plan.zones.map(({ id }) => id).sort()).toEqual(['ground', 'post', 'sky']);
    expect(plan.totals.every(({ ml }) => ml > 0)).toBe(true);
    expect([true, false, 'unknown']).toContain(plan.schedule.feasible);
  });

  it('makes the sheets for the paper that is asked for, called as the work is', async () => {
    const out = bench.path('letter');
    const titled = await written({ ...work, title: 'Low Water' });
    const ended = await stonetone('plan', titled, '--out', out, '--paper', 'letter');
    expect(ended.status, ended.complained).toBe(0);
    // Letter is 8.5 by 11 inches of 72 points.
    for (const name of ['map.pdf', 'steps.pdf']) {
      const box = readFileSync(`${out}/${name}`, 'latin1').match(/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/)!;
      expect([Number(box[1]), Number(box[2])].map(Math.round).sort()).toEqual([612, 792]);
      expect(await pdfText(readFileSync(`${out}/${name}`))).toMatch(/Low Water/);
    }
  });

  it('ends well for a plan that cannot be kept, and its step sheet says so', async () => {
    const out = bench.path('unkept');
    const wide = { ...post, medium: 'crayon-2', deposit: 'middle' };
    const half = (x: number) => [
      [x, 10],
      [x + 185, 10],
      [x + 185, 490],
      [x, 490],
    ];
    const zones = [
      { ...wide, polygonMm: half(10) },
      { ...wide, id: 'mud', polygonMm: half(200) },
    ];
    const ended = await stonetone('plan', await written({ ...work, zones, people: 1 }), '--out', out);
    expect(ended.status, ended.complained).toBe(0);
    expect(ended.said).toMatch(/^Can't be kept: /);
    expect(await pdfText(readFileSync(`${out}/steps.pdf`))).toMatch(/can’t be kept by one person/);
  });

  it('takes a table from a file beside the work', async () => {
    await bench.write('ours.json', JSON.stringify({ ...tannicTable, id: 'ours' }));
    const ended = await stonetone(
      'plan',
      await written({ ...work, table: 'ours.json' }),
      '--out',
      bench.path('own'),
    );
    expect(ended.status, ended.complained).toBe(0);
  });

  it('prints the media it knows, each with an id and a name', async () => {
    const ended = await stonetone('plan', '--media');
    const media = JSON.parse(ended.said) as { id: string; name: string }[];
    expect(ended.status).toBe(0);
    expect(media.length).toBeGreaterThan(10);
    for (const medium of media)
      expect([medium.id, medium.name]).toEqual([expect.stringMatching(/\S/), expect.stringMatching(/\S/)]);
    expect(new Set(media.map(({ id }) => id)).size).toBe(media.length);
  });

  const stone = work.stone;
  const zones = (second: object) => ({ ...work, zones: [post, { ...sky, ...second }] });
  const cases: readonly (readonly [string, unknown, FailureCode, RegExp])[] = [
    ['no stone', { ...work, stone: undefined }, 'plan-malformed', /at stone\./],
    [
      'a stone of words',
      { ...work, stone: { ...stone, widthMm: 'wide' } },
      'plan-malformed',
      /stone\.widthMm/,
    ],
    ['a stone of minus', { ...work, stone: { ...stone, heightMm: -5 } }, 'plan-malformed', /stone\.heightMm/],
    [
      'a stone like a wall',
      { ...work, stone: { ...stone, widthMm: 9000 } },
      'stone-impossible',
      /9000 x 500 x 80 mm.*\(stone\)/,
    ],
    ['a stone like paper', { ...work, stone: { ...stone, thicknessMm: 1 } }, 'stone-impossible', /too small/],
    [
      'a zone off the stone',
      zones({
        polygonMm: [
          [10, 10],
          [50, 10],
          [50, 900],
        ],
      }),
      'zone-off-stone',
      /\(zones\[1\]\.polygonMm\[2\]\)/,
    ],
    [
      'a zone that crosses itself',
      zones({
        polygonMm: [
          [10, 10],
          [50, 50],
          [50, 10],
          [10, 50],
        ],
      }),
      'zone-self-crossing',
      /\(zones\[1\]\.polygonMm\)/,
    ],
    [
      'a zone without area',
      zones({
        polygonMm: [
          [10, 10],
          [50, 50],
          [90, 90],
        ],
      }),
      'zone-degenerate',
      /\(zones\[1\]\.polygonMm\)/,
    ],
    ['two zones of one id', zones({ id: 'post' }), 'zone-duplicate', /\(zones\[1\]\.id\)/],
    ['a zone called ground', zones({ id: 'ground' }), 'zone-id-reserved', /\(zones\[1\]\.id\)/],
    ['a zone without points', zones({ polygonMm: [] }), 'plan-malformed', /zones\[1\]\.polygonMm/],
    [
      'an unknown deposit',
      zones({ deposit: 'thick' }),
      'plan-malformed',
      /light, middle, dark, solid, wash.*zones\[1\]\.deposit/,
    ],
    ['an unknown table', { ...work, table: 'vinegar' }, 'table-malformed', /vinegar.*\(table\)/],
    [
      'a table without ground',
      {
        ...work,
        table: { ...tannicTable, rows: tannicTable.rows.filter((row) => row.strength !== 'ground') },
      },
      'table-malformed',
      /table\.rows/,
    ],
    [
      'a table without rows',
      { ...work, table: { ...tannicTable, rows: [] } },
      'plan-malformed',
      /table\.rows/,
    ],
    ['three people', { ...work, people: 3 }, 'plan-malformed', /people/],
    ['a film like a lake', { ...work, filmMm: 40 }, 'plan-malformed', /at most 3.*filmMm/],
    [
      'a pH of soap and more',
      { ...work, tannic: { gramsPerLitre: 20, pH: 15, gum: true } },
      'plan-malformed',
      /tannic\.pH/,
    ],
    ['a list', [], 'plan-malformed', /./],
  ];
  it.each(cases)('%s is refused at its place, and nothing is written', async (_, content, code, mentions) => {
    const out = bench.path('never written');
    expectFailure(await stonetone('plan', await written(content), '--out', out), code, mentions);
    expect(existsSync(out)).toBe(false);
  });

  it('broken JSON, a missing file, no file, no folder', async () => {
    const out = bench.path('never written');
    const broken = await bench.write('broken.json', '{');
    expectFailure(await stonetone('plan', broken, '--out', out), 'plan-malformed', /not JSON/);
    expectFailure(
      await stonetone('plan', bench.path('none.json'), '--out', out),
      'file-missing',
      /none\.json/,
    );
    expectFailure(await stonetone('plan', '--out', out), 'argument-missing', /work\.json/);
    expectFailure(await stonetone('plan', await written(work)), 'argument-missing', /--out/);
    expectFailure(
      await stonetone('plan', await written(work), '--out', out, '--paper', 'a5'),
      'argument-malformed',
      /--paper.*a5/,
    );
    expect(existsSync(out)).toBe(false);
  });
});

describe('stonetone mix', () => {
  const asked = async (question: unknown) =>
    stonetone('mix', await bench.write('in.json', JSON.stringify(question)));

  it('answers with figures, formula and source', async () => {
    const ended = await asked({ kind: 'alligation', weakPercent: 10, strongPercent: 70, wantedPercent: 30 });
    expect(ended.status, ended.complained).toBe(0);
    const answer = JSON.parse(ended.said) as MixtureAnswer;
    // 30 lies 20 above the weak and 40 under the strong: one part strong to two weak.
    const [strong, weak] = answer.figures.map(({ value }) => value) as [number, number];
    expect(strong / weak).toBeCloseTo(0.5, 12);
    expect(answer.formula).toMatch(/\S/);
    expect(answer.source).toMatch(/\S/);
  });

  it.each<readonly [string, unknown, FailureCode, RegExp]>([
    ['no kind', {}, 'mixture-malformed', /kind/],
    ['an unknown kind', { kind: 'soup' }, 'mixture-malformed', /kind/],
    ['a missing amount', { kind: 'dilution', stock: 10, wanted: 5 }, 'mixture-malformed', /wantedMl/],
    ['a minus', { kind: 'limestone', protonsMmol: -1, areaCm2: 5 }, 'mixture-malformed', /protonsMmol/],
    [
      'stronger than the stock',
      { kind: 'dilution', stock: 5, wanted: 10, wantedMl: 100 },
      'mixture-impossible',
      /stronger/,
    ],
    [
      'outside both strengths',
      { kind: 'alligation', weakPercent: 10, strongPercent: 20, wantedPercent: 30 },
      'mixture-impossible',
      /between/,
    ],
    [
      'a strength beyond the table',
      { kind: 'strength', acid: 'nitric', percent: 99.9 },
      'mixture-impossible',
      /table/,
    ],
    [
      'an unknown acid',
      { kind: 'pH', acids: [{ id: 'lemonade', molar: 0.1 }] },
      'mixture-impossible',
      /not known/,
    ],
  ])('%s', async (_, question, code, mentions) => {
    expectFailure(await asked(question), code, mentions);
  });

  it('broken JSON, a missing file, no file', async () => {
    expectFailure(
      await stonetone('mix', await bench.write('broken.json', 'x')),
      'mixture-malformed',
      /not JSON/,
    );
    expectFailure(await stonetone('mix', bench.path('none.json')), 'file-missing', /none\.json/);
    expectFailure(await stonetone('mix'), 'argument-missing', /in\.json/);
  });
});
