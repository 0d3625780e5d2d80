import {
  type FittedValue,
  type PullReading,
  type SeriesAnswer,
  type SeriesQuestion,
  type SeriesState,
  type SeriesTone,
  seriesTones,
  type ToneCourse,
} from '../../records/proofSeries.ts';
import { boundaryQuantile } from '../../science/statistics/boundaryQuantile.ts';
import { shareAt } from './approach.ts';
import type { ApproachFit } from './approachFit.ts';
import { changeRange, plateauRange, settledRange } from './approachRange.ts';
import { comparablePulls } from './comparablePulls.ts';
import { creepWarnings } from './creepWarnings.ts';
import { seriesReason, unseenChange } from './seriesReason.ts';
import { lopsidedWarnings, seriesWarnings } from './seriesWarnings.ts';
import { type FittedSeries, fewestPulls, fitSeries, tonePoints } from './toneCourses.ts';

/** Each tail of the 90 % interval that steadiness and plateau are judged by. */
const steadyTail = 0.05;
/** Each tail of the interval that must leave out "no change" before a tone is said to move: 5 % shared by three tones. */
const movingTail = 0.05 / seriesTones.length;
/** A plateau further off than this many pulls is no forecast. Our rule. */
const farthest = 20;

/**
 * Says whether a series of pulls is steady: the 90 % interval of the fitted change over the next two pulls lies within the
 * tolerance for every tone, on at least four comparable pulls.
 * @param question pulls with numbers that differ, in any order; σ and tolerance above 0.
 * @param places whether warnings name the place in the question, for somebody who wrote it as a file.
 */
export function answerSeries(question: SeriesQuestion, places = true): SeriesAnswer {
  const parted = comparablePulls(question.pulls);
  const { comparable } = parted;
  const compared = comparable.map(({ n }) => n);
  const read = seriesTones.filter((tone) => tonePoints(comparable, tone).length > 0);
  const series = fitSeries(comparable, question.noise.tone);
  const noted = seriesWarnings({ question, parted, read, scatter: series.scatter, places });
  const few = read.filter((tone) => !series.fits.has(tone));
  if (read.length === 0 || few.length > 0) {
    const reason = seriesReason({ kind: 'few', count: comparable.length, few, comparable });
    const plain = { steady: 'unknown', state: 'cannot-tell', since: null, plateau: null } as const;
    return { ...plain, reason, warnings: noted, compared, tones: [] };
  }
  const tones = read.map((tone) => course(tone, series));
  const moving = stateOf(tones, series, question.tolerance);
  const settled = latestOf(
    read.map((tone) => series.fits.get(tone)!),
    series,
    question.tolerance,
  );
  const foreseen = settled.high <= compared.at(-1)! + farthest ? settled : null;
  // What still moves but will settle is not yet steady; what moves without an end in sight grows.
  const state = moving === 'growing' && foreseen ? 'not-yet' : moving;
  const creep = state === 'steady' ? creepWarnings(series, question.tolerance, movingTail) : [];
  const since = state === 'steady' ? steadySince(comparable, read, series, question.tolerance) : null;
  return {
    steady: state === 'cannot-tell' ? 'unknown' : state === 'steady',
    state,
    since,
    reason: seriesReason({
      kind: 'fitted',
      state,
      tones,
      since,
      settled: foreseen,
      tolerance: question.tolerance,
      deviation: question.noise.tone * series.scatter,
      scattered: series.scatter > 1,
      compared,
      pullsNeeded: pullsNeeded(question, series.scatter),
    }),
    plateau: foreseen && { pull: foreseen },
    warnings: [...noted, ...creep, ...lopsidedWarnings(tones, question.tolerance)],
    compared,
    tones,
  };
}

function course(tone: SeriesTone, series: FittedSeries): ToneCourse {
  const fit = series.fits.get(tone)!;
  const doubt = series.doubt(steadyTail);
  return { tone, change: changeRange(fit, doubt), plateau: plateauRange(fit, doubt) };
}

function stateOf(
  tones: readonly ToneCourse[],
  series: FittedSeries,
  tolerance: number,
): Exclude<SeriesState, 'not-yet'> {
  const outside = tones.filter(({ change }) => change.high > tolerance || change.low < -tolerance);
  if (outside.length === 0) return 'steady';
  const moving = outside.map(({ tone }) => changeRange(series.fits.get(tone)!, series.doubt(movingTail)));
  if (moving.some(({ low }) => low > unseenChange)) return 'growing';
  return moving.some(({ high }) => high < -unseenChange) ? 'fading' : 'cannot-tell';
}

/** The pull from which the last of the tones is settled. */
function latestOf(fits: readonly ApproachFit[], series: FittedSeries, tolerance: number): FittedValue {
  const each = fits.map((fit) => settledRange(fit, series.doubt(steadyTail), tolerance));
  const latest = (bound: keyof FittedValue) => Math.max(...each.map((range) => range[bound]));
  return { value: latest('value'), low: latest('low'), high: latest('high') };
}

/** The first of the pulls from which on every fitted tone is within the tolerance of where it stands now. */
function steadySince(
  pulls: readonly PullReading[],
  read: readonly SeriesTone[],
  { fits }: FittedSeries,
  tolerance: number,
): number {
  const away = (n: number) =>
    Math.max(
      ...read.map((tone) => {
        const { approach, rise } = fits.get(tone)!.best;
        return Math.abs(rise * (1 - shareAt(approach, n)));
      }),
    );
  return pulls.find((_, i) => pulls.slice(i).every(({ n }) => away(n) <= tolerance))?.n ?? pulls.at(-1)!.n;
}

/** How many pulls in a row without any change would be called steady at this noise, by the slope of a straight line. */
function pullsNeeded({ noise, tolerance }: SeriesQuestion, scatter: number): number {
  const reach = boundaryQuantile(1 - 2 * steadyTail, Infinity) * 2 * noise.tone * scatter;
  const half = (count: number) => reach / Math.sqrt((count ** 3 - count) / 12);
  let count = fewestPulls;
  while (half(count) > tolerance && count < 1000) count++;
  return count;
}
