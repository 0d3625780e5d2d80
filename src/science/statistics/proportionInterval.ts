import { betaQuantile, normalQuantile } from './distributions.ts';

/** A share of a whole, 0..1, between two bounds. */
interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

/**
 * Two-sided interval for a share after `hits` of `trials`, never too narrow: it holds the truth at least as often as `level` says.
 * Clopper, C. J. & Pearson, E. S. (1934), Biometrika 26, 404–413, doi 10.1093/biomet/26.4.404.
 * @param hits whole, 0..trials.
 * @param trials whole, at least 1.
 * @param level 0..1, such as 0.95.
 * @returns bounds 0..1; NaN for counts that cannot be.
 */
export function clopperPearson(hits: number, trials: number, level: number): ShareInterval {
  if (!possible(hits, trials, level)) return { low: Number.NaN, high: Number.NaN };
  const tail = (1 - level) / 2;
  return {
    low: hits === 0 ? 0 : betaQuantile(tail, hits, trials - hits + 1),
    high: hits === trials ? 1 : betaQuantile(1 - tail, hits + 1, trials - hits),
  };
}

/**
 * Two-sided interval for a share by the score method, without continuity correction: right on average, and shorter than
 * Clopper and Pearson's. Wilson, E. B. (1927), J. American Statistical Association 22, 209–212, doi 10.2307/2276774.
 * @param hits whole, 0..trials.
 * @param trials whole, at least 1.
 * @param level 0..1, such as 0.95.
 * @returns bounds 0..1; NaN for counts that cannot be.
 */
export function wilson(hits: number, trials: number, level: number): ShareInterval {
  if (!possible(hits, trials, level)) return { low: Number.NaN, high: Number.NaN };
  return scoreInterval(hits, trials, level);
}

/**
 * Wilson's interval with counts that need not be whole, as effective counts aren't.
 * @param hits 0..counted. @param counted above 0. @param level 0..1, such as 0.95.
 */
export function scoreInterval(hits: number, counted: number, level: number): ShareInterval {
  const z = normalQuantile(1 - (1 - level) / 2);
  const share = hits / counted;
  const centre = share + (z * z) / (2 * counted);
  const reach = z * Math.sqrt((share * (1 - share)) / counted + (z * z) / (4 * counted * counted));
  const whole = 1 + (z * z) / counted;
  return {
    low: share <= 0 ? 0 : (centre - reach) / whole,
    high: share >= 1 ? 1 : (centre + reach) / whole,
  };
}

/**
 * One-sided bound that the true share lies above with chance `level`, when `hits` of `trials` showed it.
 * Clopper & Pearson (1934), doi 10.1093/biomet/26.4.404.
 * @param hits whole, 0..trials. @param trials whole, at least 1. @param level 0..1, such as 0.95.
 * @returns 0 where none did; NaN for counts that cannot be.
 */
export function leastShare(hits: number, trials: number, level: number): number {
  if (!possible(hits, trials, level)) return Number.NaN;
  return hits === 0 ? 0 : betaQuantile(1 - level, hits, trials - hits + 1);
}

/**
 * One-sided upper bound of a share when none of `trials` showed it: 1 − (1 − level)^(1/trials); 3/trials is its approximation.
 * Hanley, J. A. & Lippman-Hand, A. (1983), JAMA 249, 1743–1745, doi 10.1001/jama.1983.03330370053031.
 * @param trials whole, at least 1; NaN otherwise.
 * @param level 0..1, such as 0.95.
 */
export function upperBoundOfNone(trials: number, level: number): number {
  return possible(0, trials, level) ? 1 - (1 - level) ** (1 / trials) : Number.NaN;
}

function possible(hits: number, trials: number, level: number): boolean {
  const counts = Number.isInteger(hits) && Number.isInteger(trials) && trials >= 1 && hits >= 0;
  return counts && hits <= trials && level > 0 && level < 1;
}
