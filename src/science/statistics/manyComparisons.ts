import { chiSquareQuantile } from './distributions.ts';
import { integrate } from './gaussLegendre.ts';
import { logGamma } from './logGamma.ts';
import { normalUpperTail } from './normalTail.ts';

/**
 * Chance that the range of `count` normal means, in units of their estimated standard error, stays below `range`.
 * Tukey's studentized range by its double integral; Harter, H. L. (1960), Annals of Mathematical Statistics 31, 1122–1147,
 * doi 10.1214/aoms/1177705684.
 * @param range 0 or more. @param count means compared, whole, at least 2; NaN otherwise.
 * @param degreesOfFreedom of the standard error, above 0, Infinity where it is known.
 * @returns 0..1, to about 8 digits.
 */
export function studentizedRangeBelow(range: number, count: number, degreesOfFreedom: number): number {
  if (!(Number.isInteger(count) && count >= 2 && degreesOfFreedom > 0)) return Number.NaN;
  if (range <= 0) return 0;
  return overScale(degreesOfFreedom, (scale) =>
    integrate(
      (z) => count * density(z) * (below(z) - below(z - range * scale)) ** (count - 1),
      -reach,
      reach,
      3,
    ),
  );
}

/**
 * Chance that none of several differences to one control exceeds `bound` standard errors in either direction.
 * Dunnett, C. W. (1955), J. American Statistical Association 50, 1096–1121, doi 10.1080/01621459.1955.10501294.
 * @param bound 0 or more.
 * @param ties one per difference, 0..1 excluded: differences i and j correlate by ties[i]·ties[j]; √½ where all groups are as large.
 * @param degreesOfFreedom of the standard error, above 0, Infinity where it is known.
 * @returns 0..1, to about 8 digits.
 */
export function allWithinOfControl(bound: number, ties: readonly number[], degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0) || ties.some((tie) => !(tie > 0 && tie < 1))) return Number.NaN;
  if (bound <= 0) return 0;
  const own = ties.map((tie) => Math.sqrt(1 - tie * tie));
  return overScale(degreesOfFreedom, (scale) =>
    integrate(
      (z) =>
        ties.reduce((product, tie, i) => {
          const high = below((tie * z + bound * scale) / own[i]!);
          return product * (high - below((tie * z - bound * scale) / own[i]!));
        }, density(z)),
      -reach,
      reach,
      3,
    ),
  );
}

/**
 * Where a rising chance passes a level.
 * @param chance rising from 0 at 0 towards 1. @param level 0..1 excluded.
 */
export function passingBound(chance: (bound: number) => number, level: number): number {
  let low = 0;
  let high = 4;
  while (chance(high) < level && high < 1e6) [low, high] = [high, high * 2];
  let below = chance(low) - level;
  let above = chance(high) - level;
  let kept = 0;
  for (let round = 0; round < 60 && high - low > 1e-9 * high; round++) {
    // The Illinois rule: a line between both ends, the end that stays twice in a row counted by half.
    const middle = high - (above * (high - low)) / (above - below);
    const here = chance(middle) - level;
    if (Math.abs(here) < 1e-12) return middle;
    if (here < 0) {
      if (kept < 0) above /= 2;
      [low, below, kept] = [middle, here, -1];
    } else {
      if (kept > 0) below /= 2;
      [high, above, kept] = [middle, here, 1];
    }
  }
  return (low + high) / 2;
}

/** Beyond this many standard deviations nothing is left that these digits would show. */
const reach = 7;

function below(score: number): number {
  return 1 - normalUpperTail(score);
}

function density(score: number): number {
  return Math.exp(-0.5 * score * score) / Math.sqrt(2 * Math.PI);
}

/** Mean of `value` over how the standard error is estimated: √(χ²/ν). */
function overScale(degreesOfFreedom: number, value: (scale: number) => number): number {
  if (degreesOfFreedom === Infinity) return value(1);
  const half = degreesOfFreedom / 2;
  const front = Math.LN2 + half * Math.log(half) - logGamma(half);
  const scaleDensity = (s: number) => Math.exp(front + (degreesOfFreedom - 1) * Math.log(s) - half * s * s);
  const edge = (chance: number) => Math.sqrt(chiSquareQuantile(chance, degreesOfFreedom) / degreesOfFreedom);
  return integrate(
    (s) => scaleDensity(s) * value(s),
    edge(1e-11),
    edge(1 - 1e-11),
    degreesOfFreedom < 4 ? 12 : 2,
  );
}
