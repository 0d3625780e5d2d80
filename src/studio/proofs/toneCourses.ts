import { type PullReading, type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import { boundaryQuantile } from '../../science/statistics/boundaryQuantile.ts';
import { chiSquareQuantile } from '../../science/statistics/distributions.ts';
import { type ApproachFit, fitApproach, type TonePoint } from './approachFit.ts';
import type { Doubt } from './approachRange.ts';

/** Below so many comparable readings nothing is fitted. */
export const fewestPulls = 4;
/** Start, rise and rate. */
const fitted = 3;
/** Chance of scatter as large as this by reading alone, below which the readings don't explain it. */
const rareScatter = 0.05;
/** The same for one tone, below which it may run away: rarer, as a course that does foretells wildly. */
const rareMisfit = 0.01;

/** The fitted tones of one series, with what their scatter says of σ. */
export interface FittedSeries {
  readonly fits: ReadonlyMap<SeriesTone, ApproachFit>;
  /** Scatter about the fits as a multiple of σ; 1 where σ explains it. */
  readonly scatter: number;
  /** The doubt for a chance that each tail of an interval is exceeded. */
  doubt(tail: number): Doubt;
}

/**
 * Fits an approach to every tone with enough readings. A tone that no settling approach explains may run away; where the
 * tones together still scatter more than σ, pull differs from pull, and σ is replaced by the scatter seen.
 * @param pulls comparable, in order of their numbers.
 * @param sigma of one reading, above 0.
 */
export function fitSeries(pulls: readonly PullReading[], sigma: number): FittedSeries {
  const fits = new Map<SeriesTone, ApproachFit>();
  let squares = 0;
  let freedom = 0;
  for (const tone of seriesTones) {
    const points = tonePoints(pulls, tone);
    if (points.length < fewestPulls) continue;
    const fit = fitTone(points, sigma);
    fits.set(tone, fit);
    squares += fit.best.sumOfSquares / sigma ** 2;
    freedom += points.length - fitted;
  }
  const scattered = freedom > 0 && squares > chiSquareQuantile(1 - rareScatter, freedom);
  const scatter = scattered ? Math.sqrt(squares / freedom) : 1;
  return {
    fits,
    scatter,
    doubt: (tail) => ({
      deviation: sigma * scatter,
      quantile: boundaryQuantile(1 - 2 * tail, scattered ? freedom : Infinity),
    }),
  };
}

/** A settling approach; one that may run away only where that explains what settling can't. */
function fitTone(points: readonly TonePoint[], sigma: number): ApproachFit {
  const settling = fitApproach(points, false);
  const explained = chiSquareQuantile(1 - rareMisfit, points.length - fitted) * sigma ** 2;
  if (settling.best.sumOfSquares <= explained) return settling;
  const free = fitApproach(points, true);
  return free.best.sumOfSquares <= Math.max(explained, settling.best.sumOfSquares / 4) ? free : settling;
}

/** The readings of one tone, those that weren't taken left out. */
export function tonePoints(pulls: readonly PullReading[], tone: SeriesTone): TonePoint[] {
  return pulls.flatMap((pull) => (pull[tone] === null ? [] : [{ n: pull.n, darkness: pull[tone] }]));
}
