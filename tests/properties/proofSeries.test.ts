import { expect, test } from 'vitest';
import { normalDraw, seededRandom } from '../../src/foundation/random.ts';
import type { PullReading, SeriesAnswer } from '../../src/records/proofSeries.ts';
import { answerSeries } from '../../src/studio/proofs/answerSeries.ts';

const runs = 40;
const tolerance = 0.04;
/** No reading tells this much darkness from none. */
const nothing = 0.0005;
/** 90 % of 120 tones less three standard deviations of a share. */
const leastHeld = 0.82;

type Course = (n: number) => number;
const towards =
  (rate: number): Course =>
  (n) =>
    0.6 - 0.2 * Math.exp(-rate * (n - 1));
const climbing =
  (slope: number): Course =>
  (n) =>
    0.3 + slope * (n - 1);
const level: Course = () => 0.5;

interface Told {
  readonly held: number;
  readonly answers: readonly SeriesAnswer[];
}

/** The share of 90 % intervals that hold the true change, over tones read at random about the truth. */
function simulate(course: Course, count: number, sigma: number, seed: number): Told {
  const random = seededRandom(seed);
  const read = (n: number) => course(n) + sigma * normalDraw(random);
  const truth = course(count + 2) - course(count);
  const answers = Array.from({ length: runs }, () => {
    const pulls = Array.from({ length: count }, (_, i): PullReading => {
      const n = i + 1;
      return { n, paper: 'rag', age: null, lights: read(n), middles: read(n), darks: read(n), faults: [] };
    });
    return answerSeries({ noise: { tone: sigma }, tolerance, pulls });
  });
  const changes = answers.flatMap(({ tones }) => tones.map(({ change }) => change));
  const held = changes.filter(({ low, high }) => low - nothing <= truth && truth <= high + nothing).length;
  return { held: held / changes.length, answers };
}

const share = (answers: readonly SeriesAnswer[], is: (answer: SeriesAnswer) => boolean) =>
  answers.filter(is).length / answers.length;

test.each<[string, Course, number, number, number]>([
  ['level', level, 4, 0.005, 1],
  ['level', level, 6, 0.02, 2],
  ['settling slowly', towards(0.3), 4, 0.003, 3],
  ['settling slowly', towards(0.3), 6, 0.01, 4],
  ['settling', towards(0.8), 4, 0.01, 5],
  ['settling', towards(0.8), 10, 0.003, 6],
  ['settling', towards(0.8), 6, 0.03, 7],
  ['settling fast', towards(1.5), 6, 0.01, 8],
  ['climbing', climbing(0.01), 4, 0.01, 9],
  ['climbing', climbing(0.03), 10, 0.01, 10],
  ['climbing', climbing(0.03), 4, 0.03, 11],
])('90 %% intervals hold the truth: %s, %d pulls at σ %d, seed %d', (_, course, count, sigma, seed) => {
  const { held } = simulate(course, count, sigma, seed);
  expect(held, `${count} pulls at σ ${sigma}, seed ${seed}`).toBeGreaterThanOrEqual(leastHeld);
});

test('what changes by more than the tolerance is hardly ever called steady (seeds 20 to 25)', () => {
  for (const [i, sigma] of [0.003, 0.01, 0.03].entries())
    for (const [j, count] of [4, 8].entries()) {
      const { answers } = simulate(climbing(0.022), count, sigma, 20 + 2 * i + j);
      expect(
        share(answers, ({ steady }) => steady === true),
        `${count} pulls, σ ${sigma}`,
      ).toBeLessThan(0.05);
    }
});

test('what stands still is called steady by a camera, and hardly ever said to move (seeds 30 to 33)', () => {
  for (const [i, sigma] of [0.003, 0.008].entries())
    for (const [j, count] of [4, 8].entries()) {
      const { answers } = simulate(level, count, sigma, 30 + 2 * i + j);
      const seen = `${count} pulls, σ ${sigma}`;
      expect(
        share(answers, ({ steady }) => steady === true),
        seen,
      ).toBeGreaterThan(0.85);
      expect(
        share(answers, ({ steady }) => steady === false),
        seen,
      ).toBeLessThan(0.1);
    }
});

test('the foretold pull holds the true one (seeds 40 to 42)', () => {
  for (const [i, rate] of [0.3, 0.5, 0.8].entries()) {
    const course = towards(rate);
    let truth = 1;
    while (course(truth + 2) - course(truth) > tolerance) truth++;
    const { answers } = simulate(course, 5, 0.003, 40 + i);
    const foretold = answers.flatMap(({ plateau }) => (plateau ? [plateau.pull] : []));
    expect(foretold.length).toBeGreaterThan(runs / 2);
    const held = foretold.filter(({ low, high }) => low <= truth && truth <= high).length;
    expect(held / foretold.length, `rate ${rate}`).toBeGreaterThan(leastHeld);
  }
});
