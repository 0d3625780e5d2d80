import type { Measured } from '../../../src/foundation/measured.ts';
import type { DrawnSeries } from '../../../src/paper/charts/toneLineScale.ts';
import type { SeriesPull } from '../../../src/records/workSeries.ts';
import { answerSeries } from '../../../src/studio/proofs/answerSeries.ts';

type Row = readonly [lights: number, middles: number, darks: number];

const measured = (value: number, arm: number, basis: Measured['basis']): Measured => ({
  value,
  low: value - arm,
  high: value + arm,
  basis,
  warnings: [],
});

function series(
  rows: readonly Row[],
  how: 'camera' | 'eye',
  sigma: number,
  papers: readonly string[] = [],
): DrawnSeries {
  const question = {
    noise: { tone: sigma },
    tolerance: 0.04,
    pulls: rows.map(([lights, middles, darks], index) => ({
      n: index + 1,
      paper: papers[index] ?? 'rag 250',
      age: 5,
      lights,
      middles,
      darks,
      faults: [],
    })),
  };
  const answer = answerSeries(question);
  const basis = how === 'eye' ? 'typed' : 'measured';
  const arm = how === 'eye' ? 0.196 : 2.2 * sigma;
  const pulls = question.pulls.map((pull): SeriesPull => {
    const [lights, middles, darks] = [pull.lights, pull.middles, pull.darks];
    return {
      id: `pull-${pull.n}`,
      number: pull.n,
      paper: pull.paper,
      age: pull.age,
      how,
      readings: 1,
      tones: {
        lights: measured(lights, arm, basis),
        middles: measured(middles, arm, basis),
        darks: measured(darks, arm, basis),
      },
      openFaults: [],
      compared: answer.compared.includes(pull.n),
    };
  });
  return { tolerance: 0.04, sigma, answer, pulls };
}

/** Two newsprint pulls, then six on rag that come to rest. */
export const settlingSeries = series(
  [
    [0.05, 0.31, 0.78],
    [0.06, 0.35, 0.8],
    [0.07, 0.4, 0.83],
    [0.09, 0.46, 0.86],
    [0.1, 0.49, 0.88],
    [0.104, 0.505, 0.885],
    [0.107, 0.511, 0.888],
    [0.106, 0.513, 0.889],
  ],
  'camera',
  0.005,
  ['newsprint', 'newsprint'],
);

/** Four pulls told by eye from the hatch scale. */
export const eyeSeries = series(
  [
    [0.1, 0.2, 0.8],
    [0.1, 0.27, 0.8],
    [0.15, 0.34, 0.85],
    [0.15, 0.34, 0.9],
  ],
  'eye',
  0.1,
);

/** A first pull of which only the darks were read. */
export const firstPull: DrawnSeries = {
  ...settlingSeries,
  answer: { ...settlingSeries.answer, tones: [], compared: [1] },
  pulls: [
    {
      ...settlingSeries.pulls[2]!,
      number: 1,
      compared: true,
      tones: { lights: null, middles: null, darks: measured(0.83, 0.011, 'measured') },
    },
  ],
};

export const unreadSeries: DrawnSeries = { ...firstPull, pulls: [] };
