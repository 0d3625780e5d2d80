import { describe, expect, it } from 'vitest';
import type { PullReading, SeriesQuestion } from '../../records/proofSeries.ts';
import { answerSeries } from './answerSeries.ts';

/** σ of a camera set up again, and of an eye. */
const camera = 0.005;
const eye = 0.1;

/** Pulls of one paper; lights and darks follow the middles at a third and at one and a half. */
function pulls(middles: readonly number[], changes: Partial<PullReading> = {}): PullReading[] {
  return middles.map((tone, i) => ({
    n: i + 1,
    paper: 'rag',
    age: null,
    lights: tone / 3,
    middles: tone,
    darks: Math.min(1, tone * 1.5),
    faults: [],
    ...changes,
  }));
}

function asked(series: PullReading[], sigma: number, tolerance = 0.04): SeriesQuestion {
  return { noise: { tone: sigma }, tolerance, pulls: series };
}

describe('steady', () => {
  it('a camera’s .50, .52, .51, .515 at σ 0.005 is not growing', () => {
    const answer = answerSeries(asked(pulls([0.5, 0.52, 0.51, 0.515]), camera));
    expect(answer.steady).toBe(true);
    expect(answer.state).toBe('steady');
    expect(answer.since).toBe(1);
    expect(answer.reason).toMatch(/^Steady since pull 1, pulls 1–4 compared: /);
    for (const { change } of answer.tones) {
      expect(change.low).toBeGreaterThan(-0.04);
      expect(change.high).toBeLessThan(0.04);
    }
  });

  it('an eye’s .20, .27, .34 at σ 0.1 never is, however the series goes on', () => {
    for (const middles of [
      [0.2, 0.27, 0.34],
      [0.2, 0.27, 0.34, 0.41],
      [0.2, 0.27, 0.34, 0.41, 0.48, 0.55],
      [0.2, 0.27, 0.34, 0.34, 0.34],
      [0.2, 0.27, 0.34, 0.34, 0.34, 0.34, 0.34],
    ]) {
      const answer = answerSeries(asked(pulls(middles), eye));
      expect(answer.steady, middles.join()).not.toBe(true);
      expect(answer.since).toBeNull();
      expect(answer.warnings.join()).toMatch(/by eye.*\(noise\.tone\)/);
    }
    expect(answerSeries(asked(pulls([0.2, 0.27, 0.34]), eye)).steady).toBe('unknown');
  });

  it('settles: not yet, with the pull from which it will be; then steady since about that pull', () => {
    const course = Array.from({ length: 8 }, (_, i) => 0.5 - 0.2 * 0.6 ** i);
    const early = answerSeries(asked(pulls(course.slice(0, 4)), 0.003));
    expect([early.steady, early.state]).toEqual([false, 'not-yet']);
    const { value, low, high } = early.plateau!.pull;
    expect(low).toBeLessThanOrEqual(value);
    expect(high).toBeGreaterThanOrEqual(value);
    expect(early.reason).toMatch(/^Not yet steady: .* It slows: steady from about pull \d/);
    const nearly = answerSeries(asked(pulls([0.4, 0.46, 0.5, 0.52]), camera));
    expect(nearly.reason).toMatch(/It slows: it may be steady already, and will be by about pull \d+\.$/);
    const late = answerSeries(asked(pulls(course), 0.003));
    expect(late.steady).toBe(true);
    expect(late.since).toBeGreaterThan(1);
    const darks = late.tones.find(({ tone }) => tone === 'darks')!.plateau!;
    expect(darks.low).toBeLessThan(0.75);
    expect(darks.high).toBeGreaterThan(0.75);
  });

  it('a steady climb grows, a faster and faster one too, a falling one prints paler', () => {
    const of = (middles: number[]) => answerSeries(asked(pulls(middles), camera));
    const climb = of([0.3, 0.35, 0.4, 0.45, 0.5]);
    expect([climb.steady, climb.state, climb.plateau]).toEqual([false, 'growing', null]);
    expect(climb.reason).toMatch(/^Growing: .*middles.* No end of it/);
    expect(of([0.3, 0.31, 0.34, 0.4]).state).toBe('growing');
    expect([of([0.5, 0.45, 0.4, 0.35]).steady, of([0.5, 0.45, 0.4, 0.35]).state]).toEqual([false, 'fading']);
  });

  it('steady over two pulls, but not over ten, is said', () => {
    const slow = answerSeries(asked(pulls(Array.from({ length: 10 }, (_, i) => 0.4 + 0.01 * i)), camera));
    expect(slow.steady).toBe(true);
    expect(slow.warnings).toContain(
      'Steady over two pulls, yet the middles still climb: by about 0.10 over the next ten, more than the tolerance.',
    );
    const settled = Array.from({ length: 10 }, (_, i) => 0.5 - 0.2 * 0.5 ** i);
    expect(answerSeries(asked(pulls(settled), camera)).warnings).toEqual([]);
  });

  it('what rounds to nothing is said as less than the least, never as a range of no width', () => {
    const settled = [0.3, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5];
    const { reason, tones } = answerSeries(asked(pulls(settled), camera));
    expect(tones.every(({ change }) => change.high < 0.0005)).toBe(true);
    expect(reason).toMatch(/the lights change by less than 0\.001.* and the darks by less than 0\.001/);
    expect(reason).toMatch(/a course that has run out; one reading still strays by 0\.005\.$/);
    expect(reason).not.toMatch(/0\.000|0\.00 /);
    expect(answerSeries(asked(pulls([0.5, 0.5, 0.5, 0.5]), camera)).reason).toMatch(
      /\(−0\.009 to \+0\.009, 9 times of 10\)/,
    );
  });

  it('one tone that grows is enough', () => {
    const series = pulls([0.5, 0.5, 0.5, 0.5, 0.5]).map((pull) => ({ ...pull, darks: 0.6 + 0.05 * pull.n }));
    const answer = answerSeries(asked(series, camera));
    expect([answer.steady, answer.state]).toEqual([false, 'growing']);
    expect(answer.reason).toMatch(/the darks change by \+0\.10/);
    expect(answer.reason).not.toMatch(/lights|middles/);
  });

  it('noise too large for the tolerance can’t tell, and says what would', () => {
    const near = answerSeries(asked(pulls([0.5, 0.5, 0.5, 0.5]), 0.03));
    expect([near.steady, near.plateau]).toEqual(['unknown', null]);
    expect(near.reason).toMatch(/strays by 0\.03: one more comparable pull may tell/);
    expect(answerSeries(asked(pulls([0.5, 0.5, 0.5, 0.5]), eye, 0.01)).reason).toMatch(/by photograph/);
    expect(answerSeries(asked(pulls([0.5, 0.5, 0.5, 0.5]), 0.03, 0.06)).steady).toBe(true);
  });

  it('pulls that scatter more than σ widen the intervals and ask whether it is the photograph', () => {
    const answer = answerSeries(asked(pulls([0.5, 0.55, 0.45, 0.5, 0.55, 0.47]), camera));
    expect(answer.steady).toBe('unknown');
    expect(answer.reason).toMatch(/The pulls differ among themselves by 0/);
    expect(answer.warnings.join()).toMatch(/scatter 1\d\.\d times.*is it the photograph/);
  });
});

describe('comparable', () => {
  const steady = [0.5, 0.505, 0.5, 0.5];

  it('papers are never pooled: those of the latest are judged, the others named', () => {
    const mixed = pulls([0.3, 0.4, ...steady]).map((pull) => ({
      ...pull,
      paper: pull.n < 3 ? 'newsprint' : ' Rag ',
    }));
    const answer = answerSeries(asked(mixed, camera));
    expect([answer.steady, answer.compared]).toEqual([true, [3, 4, 5, 6]]);
    expect(answer.warnings).toEqual([
      'Mixed papers: pulls 1 and 2 on newsprint left out, only pulls on Rag, the paper of the latest, are compared (pulls[0].paper).',
    ]);
    const apart = pulls([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]).map((pull) => ({
      ...pull,
      paper: pull.n % 2 ? 'newsprint' : 'rag',
    }));
    const halves = answerSeries(asked(apart, camera));
    expect([halves.steady, halves.compared]).toEqual(['unknown', [2, 4, 6]]);
    expect(halves.reason).toMatch(/3 comparable pulls of one paper and one age, 4 are needed/);
  });

  it('ages are never pooled; nearly equal ones and all from a day on are the same', () => {
    const aged = (ages: PullReading['age'][]) =>
      answerSeries(
        asked(
          pulls(ages.map(() => 0.5)).map((pull, i) => ({ ...pull, age: ages[i]! })),
          camera,
        ),
      );
    expect(aged([5, 5, 6, 5, 5]).compared).toEqual([1, 2, 3, 4, 5]);
    expect(aged([1440, 2880, 1500, 4000]).steady).toBe(true);
    const apart = aged([5, 5, 5, 5, 1440]);
    expect([apart.steady, apart.compared]).toEqual(['unknown', [5]]);
    expect(apart.warnings[0]).toMatch(/^Mixed ages: pulls 1–4 left out.*\(pulls\[0\]\.age\)/);
    expect(aged(['wet', 'Wet', 'dry', 'dry']).compared).toEqual([3, 4]);
    expect(aged([5, 5, null, null]).compared).toEqual([3, 4]);
  });

  it('goes by the pulls’ numbers, whatever their order and gaps', () => {
    const course = pulls([0.3, 0.4, 0.45, 0.475, 0.49]).map((pull) => ({ ...pull, n: pull.n * 2 }));
    const answer = answerSeries(asked(course, camera));
    expect(answer.compared).toEqual([2, 4, 6, 8, 10]);
    expect(answerSeries(asked([...course].reverse(), camera))).toEqual(answer);
  });

  it('no pulls, unread tones, faults', () => {
    expect(answerSeries(asked([], camera))).toMatchObject({
      steady: 'unknown',
      reason: 'Can’t tell: there are no pulls yet.',
      warnings: [],
    });
    const noDarks = answerSeries(asked(pulls(steady, { darks: null }), camera));
    expect(noDarks.steady).toBe(true);
    expect(noDarks.warnings).toEqual(['The darks were not read: the answer says nothing of them.']);
    const half = pulls(steady).map((pull) => ({ ...pull, darks: pull.n > 2 ? pull.darks : null }));
    expect(answerSeries(asked(half, camera)).reason).toMatch(
      /of 4 comparable pulls the darks on 2 were read/,
    );
    const slurred = answerSeries(asked(pulls(steady, { faults: ['slur'] }), camera));
    expect(slurred.warnings[0]).toMatch(/^Pull 4 has open faults: slur\..*\(pulls\[3\]\.faults\)/);
  });
});

it('nothing is said to grow where its interval begins at no change, and a lopsided interval is explained', () => {
  const eye = [0.2, 0.5, 0.5, 0.5].map((middles, i) => ({
    n: i + 1,
    paper: 'rag',
    age: null,
    lights: null,
    middles,
    darks: null,
    faults: [],
  }));
  const answer = answerSeries({ noise: { tone: 0.1 }, tolerance: 0.04, pulls: eye }, false);
  expect(answer.state).toBe('cannot-tell');
  expect(answer.reason).not.toMatch(/rowing/);
  expect(answer.warnings.at(-1)).toMatch(/^The range of the middles reaches far to one side/);
  expect(answer.warnings.join(' ')).not.toMatch(/noise\.tone|pulls\[/);
});
