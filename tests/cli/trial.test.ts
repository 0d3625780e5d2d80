import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TrialAnalysis } from '../../src/records/trial.ts';
import { publishedRows } from '../published/rows.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

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
    expectFailure(await stonetone('trial'), 'argument-missing', /analyse/);
  });
});
