import {
  type SeriesQuestion,
  type SeriesTone,
  seriesTones,
  type ToneCourse,
} from '../../records/proofSeries.ts';
import type { ComparablePulls } from './comparablePulls.ts';
import { listWords, pullWords } from './seriesWords.ts';

interface Judged {
  readonly question: SeriesQuestion;
  readonly parted: ComparablePulls;
  readonly read: readonly SeriesTone[];
  readonly scatter: number;
  /** Whether the place in the question is named, for somebody who wrote it as a file. */
  readonly places: boolean;
}

/** From this σ on a reading is as rough as one by eye. */
const byEye = 0.1;

/** What to know beside the answer, one sentence each, with the place in the question where it is wanted. */
export function seriesWarnings({ question, parted, read, scatter, places }: Judged): string[] {
  const { comparable, otherPaper, otherAge } = parted;
  const latest = comparable.at(-1);
  if (!latest) return [];
  const at = (place: string) => (places ? ` (${place})` : '');
  const field = (n: number, name: string) =>
    at(`pulls[${question.pulls.findIndex((pull) => pull.n === n)}].${name}`);
  const papers = [...new Set(otherPaper.map(({ paper }) => paper.trim()))];
  const others = (pulls: ComparablePulls['otherPaper']) => pullWords(pulls.map(({ n }) => n));
  const unread = seriesTones.filter((tone) => !read.includes(tone));
  return [
    ...(otherPaper.length > 0
      ? [
          `Mixed papers: ${others(otherPaper)} on ${listWords(papers)} left out, only pulls on ${latest.paper.trim()}, the paper of the latest, are compared${field(otherPaper[0]!.n, 'paper')}.`,
        ]
      : []),
    ...(otherAge.length > 0
      ? [
          `Mixed ages: ${others(otherAge)} left out, read at another age than the latest${field(otherAge[0]!.n, 'age')}.`,
        ]
      : []),
    ...(latest.faults.length > 0
      ? [
          `Pull ${latest.n} has open faults: ${listWords(latest.faults)}. Steady says nothing of them${field(latest.n, 'faults')}.`,
        ]
      : []),
    ...(unread.length > 0 && read.length > 0
      ? [`The ${listWords(unread)} were not read: the answer says nothing of them.`]
      : []),
    ...(scatter > 1
      ? [
          `These pulls scatter ${scatter.toFixed(1)} times as much as one reading does: ink, pressure or damp differ from pull to pull, or is it the photograph? Read one sheet twice. The ranges are widened for it.`,
        ]
      : []),
    ...(question.noise.tone >= byEye
      ? [
          `A reading that strays so far is as rough as one by eye, by which steady usually can’t be known${at('noise.tone')}.`,
        ]
      : []),
  ];
}

/** An interval is lopsided from this ratio of its longer to its shorter side on. Our rule. */
const lopsided = 3;

/** Why an interval reaches much further to one side, where that side is what lies outside the tolerance (a darkness, above 0). */
export function lopsidedWarnings(tones: readonly ToneCourse[], tolerance: number): string[] {
  const far = tones.filter(({ change: { value, low, high } }) => {
    const [above, below] = [high - value, value - low];
    return (high > tolerance && above > lopsided * below) || (low < -tolerance && below > lopsided * above);
  });
  if (far.length === 0) return [];
  return [
    `The range of the ${listWords(far.map(({ tone }) => tone))} reaches far to one side: these pulls don’t tell how fast the change slows, so a straight course is possible as well as one that is over.`,
  ];
}
