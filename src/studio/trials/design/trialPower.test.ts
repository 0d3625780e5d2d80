import { expect, it } from 'vitest';
import { normalDraw, seededRandom } from '../../../foundation/random.ts';
import type { TrialRow } from '../../../records/trial.ts';
import { analyseTrial } from '../analyseTrial.ts';
import { errorsOf } from './stratumErrors.ts';
import { trialPower } from './trialPower.ts';

const scatter = { stone: 0.04, strip: 0.03, patch: 0.04 };
const two = { name: 'medium', levels: ['crayon', 'wash'] };

/** Two levels on every stone are pairs: `power.t.test(n, sd = √2 · 0.04, power = 0.8, type = "paired")` of R 4.2.2. */
it.each([
  [3, 0.1846129],
  [6, 0.08116551],
  [10, 0.056363],
  [20, 0.03733366],
])('%i pairs notice what a paired t-test does', (stones, delta) => {
  const size = { stones, whole: null, sub: two, patchRepeats: 1, stripRepeats: 1, control: null };
  const { sub, whole } = trialPower(size, 'middle', scatter);
  expect(whole).toBeNull();
  // Four thousand draws: the share is known to 0.013, the difference to about 3 %.
  expect(Math.abs(sub! / delta - 1)).toBeLessThan(0.04);
});

it('nothing can be noticed without a replicate', () => {
  const etch = { name: 'etch', levels: ['None', 'gum', 'tannic'] };
  const size = { stones: 1, whole: etch, sub: two, patchRepeats: 4, stripRepeats: 1, control: 'None' };
  const { whole, sub } = trialPower(size, 'low', scatter);
  expect(whole).toBeNull();
  expect(sub).toBeGreaterThan(0);
  expect(trialPower({ ...size, stripRepeats: 2 }, 'low', scatter).whole).toBeGreaterThan(0);
});

it('what it says is noticed 8 times in 10 is so when whole trials are drawn and analysed', () => {
  const etch = { name: 'etch', levels: ['None', 'gum', 'tannic'] };
  const size = { stones: 4, whole: etch, sub: two, patchRepeats: 2, stripRepeats: 1, control: 'None' };
  const { whole } = trialPower(size, 'middle', scatter);
  const trials = 150;
  let noticed = 0;
  for (let seed = 1; seed <= trials; seed++) {
    const { differences } = analyseTrial({ rows: drawn(seed, whole!), unreadLines: [] }, columns, 'None');
    const tannic = differences.find((one) => one.level === 'tannic')!;
    noticed += Number(tannic.low > 0 || tannic.high < 0);
  }
  // 0.8 of 150: seen outside 0.70 to 0.90 less than once in 300; the seeds are fixed.
  expect(noticed / trials).toBeGreaterThan(0.7);
  expect(noticed / trials).toBeLessThan(0.9);
}, 240_000);

const columns = { response: 'tone', blocks: ['stone'], whole: 'etch', sub: 'medium', strip: null };

function drawn(seed: number, difference: number): TrialRow[] {
  const random = seededRandom(seed);
  return [0, 1, 2, 3].flatMap((stone) => {
    const ofStone = scatter.stone * normalDraw(random);
    return ['None', 'gum', 'tannic'].flatMap((whole) => {
      const ofStrip = ofStone + scatter.strip * normalDraw(random) + (whole === 'tannic' ? difference : 0);
      return ['crayon', 'wash', 'crayon', 'wash'].map((sub) => ({
        response: ofStrip + scatter.patch * normalDraw(random),
        blocks: [`T-${stone}`],
        whole,
        sub,
        strip: null,
      }));
    });
  });
}

/** Latin square: error df (t − 1)(t − 2); blocks: (b − 1)(t − 1). The difference by the t distribution, 4,000 draws apart. */
it.each([
  [{ layout: 'row-column', patchRepeats: 5, stones: 1 }, 12, 5],
  [{ layout: 'blocked', blocks: 'both', patchRepeats: 1, stones: 1 }, 12, 4],
  [{ layout: 'blocked', blocks: 'none', patchRepeats: 1, stones: 4 }, 12, 4],
] as const)('%o has the degrees of freedom of its kind', (layout, df, repeats) => {
  const five = { name: 'medium', levels: ['a', 'b', 'c', 'd', 'e'] };
  const size = { whole: null, sub: five, stripRepeats: 1, control: 'a', ...layout };
  const { sub } = errorsOf(size, scatter);
  expect(sub.df).toBe(df);
  expect(sub.variance).toBeCloseTo((2 * scatter.patch ** 2) / repeats, 12);
  expect(trialPower(size, 'middle', scatter).sub).toBeGreaterThan(2 * Math.sqrt(sub.variance));
});

it('treatments of whole stones are told by stones alone', () => {
  const size = {
    stones: 6,
    whole: null,
    sub: two,
    perStone: two,
    patchRepeats: 9,
    stripRepeats: 1,
    control: null,
  };
  const few = trialPower({ ...size, stones: 2 }, 'middle', scatter);
  expect(few.perStone).toBeNull();
  // `power.t.test(n = 3, sd = sqrt(0.04^2 + 0.03^2 + 0.04^2 / 18), power = 0.8)` of R 4.2.2 gives 0.1563.
  const { perStone } = trialPower(size, 'middle', scatter);
  expect(Math.abs(perStone! / 0.1563 - 1)).toBeLessThan(0.04);
});
