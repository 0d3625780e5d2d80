import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SeriesAnswer } from '../../src/records/proofSeries.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const asked = async (question: unknown) =>
  stonetone('series', await bench.write('in.json', JSON.stringify(question)));

async function answered(question: unknown): Promise<SeriesAnswer> {
  const ended = await asked(question);
  expect(ended.complained).toBe('');
  expect(ended.status).toBe(0);
  return JSON.parse(ended.said) as SeriesAnswer;
}

const pull = (n: number, middles: number, changes: object = {}) => ({
  n,
  paper: 'rag',
  lights: 0.1,
  middles,
  darks: 0.8,
  faults: [],
  ...changes,
});
const camera = { noise: { tone: 0.005 } };
const steady = [0.5, 0.52, 0.51, 0.515].map((tone, i) => pull(i + 1, tone));

describe('stonetone series', () => {
  it('says steady, since when and why', async () => {
    const answer = await answered({ ...camera, pulls: steady });
    expect(answer).toMatchObject({ steady: true, since: 1, warnings: [], compared: [1, 2, 3, 4] });
    expect(answer.reason).toMatch(/^Steady since pull 1/);
    expect(answer.plateau!.pull).toEqual({ value: 1, low: 1, high: 1 });
  });

  it('says growing, and can’t tell by eye', async () => {
    const climb = [0.3, 0.35, 0.4, 0.45].map((tone, i) => pull(i + 1, tone));
    expect(await answered({ ...camera, pulls: climb })).toMatchObject({
      steady: false,
      state: 'growing',
      since: null,
      plateau: null,
    });
    const eye = [0.2, 0.27, 0.34].map((tone, i) => ({ n: i + 1, paper: 'newsprint', middles: tone }));
    const unknown = await answered({ noise: { tone: 0.1 }, pulls: eye });
    expect(unknown).toMatchObject({ steady: 'unknown', since: null, plateau: null });
    expect(unknown.reason).toMatch(/3 comparable pulls .*4 are needed/);
  });

  it('takes a tolerance of one’s own', async () => {
    expect((await answered({ ...camera, tolerance: 0.002, pulls: steady })).steady).not.toBe(true);
  });

  it('warns of mixed papers with the place', async () => {
    const pulls = [pull(1, 0.3, { paper: 'newsprint' }), ...steady.map((one) => ({ ...one, n: one.n + 1 }))];
    const answer = await answered({ ...camera, pulls });
    expect(answer.compared).toEqual([2, 3, 4, 5]);
    expect(answer.warnings).toEqual([expect.stringMatching(/^Mixed papers: .*\(pulls\[0\]\.paper\)\.$/)]);
  });

  it('no pulls at all is an answer', async () => {
    expect((await answered({ ...camera, pulls: [] })).steady).toBe('unknown');
  });

  it.each<readonly [string, unknown, RegExp]>([
    ['no noise', { pulls: steady }, /an object is missing at noise/],
    ['no σ', { noise: {}, pulls: steady }, /a number is missing at noise\.tone/],
    ['a σ of nothing', { noise: { tone: 0 }, pulls: steady }, /more than 0 at noise\.tone/],
    ['a tolerance below nothing', { ...camera, tolerance: -1, pulls: steady }, /at tolerance/],
    ['no pulls', camera, /a list is missing at pulls/],
    [
      'a number twice',
      { ...camera, pulls: [...steady, pull(2, 0.5)] },
      /pull 2 is given twice at pulls\[4\]\.n/,
    ],
    ['a number that is not whole', { ...camera, pulls: [pull(1.5, 0.5)] }, /whole number at pulls\[0\]\.n/],
    [
      'per cent',
      { ...camera, pulls: [pull(1, 0.5), pull(2, 52)] },
      /a darkness lies between 0 and 1 at pulls\[1\]\.middles/,
    ],
    ['below paper', { ...camera, pulls: [pull(1, 0.5, { lights: -0.3 })] }, /at pulls\[0\]\.lights/],
    ['a word for a tone', { ...camera, pulls: [pull(1, 0.5, { darks: 'dark' })] }, /at pulls\[0\]\.darks/],
    [
      'no paper',
      { ...camera, pulls: [pull(1, 0.5, { paper: ' ' })] },
      /paper is missing at pulls\[0\]\.paper/,
    ],
    [
      'no tone',
      { ...camera, pulls: [{ n: 1, paper: 'rag' }] },
      /neither lights, middles nor darks at pulls\[0\]/,
    ],
    ['faults in one text', { ...camera, pulls: [pull(1, 0.5, { faults: 'slur' })] }, /at pulls\[0\]\.faults/],
    ['a list', [], /not an object/],
  ])('%s', async (_, question, mentions) => {
    expectFailure(await asked(question), 'series-malformed', mentions);
  });

  it('broken JSON, a missing file, no file', async () => {
    expectFailure(
      await stonetone('series', await bench.write('broken.json', '{')),
      'series-malformed',
      /not JSON/,
    );
    expectFailure(await stonetone('series', bench.path('none.json')), 'file-missing', /none\.json/);
    expectFailure(await stonetone('series'), 'argument-missing', /in\.json/);
  });
});
