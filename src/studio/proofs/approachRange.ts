import type { FittedValue } from '../../records/proofSeries.ts';
import { nextTwo, settledFrom, shareOfPlateau } from './approach.ts';
import type { ApproachFit, RateFit } from './approachFit.ts';

/** How far from the best fit an approach may lie and still be held possible. */
export interface Doubt {
  /** Standard deviation of one reading, about the fit. */
  readonly deviation: number;
  /** Half-width of the interval in standard deviations: a normal or Student quantile. */
  readonly quantile: number;
}

/** One rate that the readings allow, with the rises that go with it. */
interface Allowed {
  readonly fit: RateFit;
  readonly rises: readonly [number, number];
}

/**
 * Profile-likelihood interval of the change over the two pulls after the latest: the least and largest that any approach
 * within the doubt gives, since near a flat course the rate itself can't be known and a slope from its own error would lie.
 */
export function changeRange(fit: ApproachFit, doubt: Doubt): FittedValue {
  const change = ({ approach }: RateFit, rise: number) =>
    rise * nextTwo(approach, approach.first + approach.span);
  const all = allowed(fit, doubt).flatMap(({ fit, rises }) => rises.map((rise) => change(fit, rise)));
  return { value: change(fit.best, fit.best.rise), low: Math.min(...all), high: Math.max(...all) };
}

/** The same for the darkness of the plateau; null where an approach without one is possible. */
export function plateauRange(fit: ApproachFit, doubt: Doubt): FittedValue | null {
  const best = plateauOf(fit.best);
  const ends = allowed(fit, doubt).map(({ fit }) => ({ fit, plateau: plateauOf(fit) }));
  if (best === null || ends.some(({ plateau }) => plateau === null)) return null;
  const all = ends.flatMap(({ fit: at, plateau }) => {
    const reach = reachAt(fit, at, doubt)! * doubt.deviation;
    const share = shareOfPlateau(at.approach)!;
    const half = reach * Math.sqrt(1 / at.count + ((share - at.meanShare) * at.riseError) ** 2);
    return [plateau! - half, plateau! + half];
  });
  return { value: best, low: Math.min(...all), high: Math.max(...all) };
}

/** The same for the pull from which on the tone is settled within a tolerance, in whole pulls; `high` may be Infinity. */
export function settledRange(fit: ApproachFit, doubt: Doubt, tolerance: number): FittedValue {
  const whole = (at: RateFit, rise: number) => Math.ceil(settledFrom(at.approach, rise, tolerance) - 1e-9);
  const ends = allowed(fit, doubt).map(({ fit: at, rises: [low, high] }) => {
    const least = low < 0 && high > 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
    return [whole(at, least), whole(at, Math.max(Math.abs(low), Math.abs(high)))] as const;
  });
  return {
    value: whole(fit.best, fit.best.rise),
    low: Math.min(...ends.map(([low]) => low)),
    high: Math.max(...ends.map(([, high]) => high)),
  };
}

function plateauOf({ approach, rise, meanDarkness, meanShare }: RateFit): number | null {
  const share = shareOfPlateau(approach);
  return share === null ? null : meanDarkness + rise * (share - meanShare);
}

function allowed(fit: ApproachFit, doubt: Doubt): Allowed[] {
  return fit.rates.flatMap((at) => {
    const reach = reachAt(fit, at, doubt);
    if (reach === null) return [];
    const half = reach * at.riseError * doubt.deviation;
    return [{ fit: at, rises: [at.rise - half, at.rise + half] as const }];
  });
}

/** What of the quantile is left for start and rise once this rate has spent its part; null where it spends more. */
function reachAt(fit: ApproachFit, at: RateFit, { deviation, quantile }: Doubt): number | null {
  const spent = (at.sumOfSquares - fit.best.sumOfSquares) / deviation ** 2;
  return spent > quantile ** 2 ? null : Math.sqrt(quantile ** 2 - Math.max(0, spent));
}
