import { type SeriesQuestion, type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { ComparablePulls } from './comparablePulls.ts';
import { listWords, pullWords } from './seriesWords.ts';

interface Judged {
  readonly question: SeriesQuestion;
  readonly parted: ComparablePulls;
  readonly read: readonly SeriesTone[];
  readonly scatter: number;
}

/** From this σ on a reading is as rough as one by eye. */
const byEye = 0.1;

/** What to know beside the answer, one sentence each with the place in the question where there is one. */
export function seriesWarnings({ question, parted, read, scatter }: Judged): string[] {
  const { comparable, otherPaper, otherAge } = parted;
  const latest = comparable.at(-1);
  if (!latest) return [];
  const place = (n: number) => question.pulls.findIndex((pull) => pull.n === n);
  const papers = [...new Set(otherPaper.map(({ paper }) => paper.trim()))];
  const others = (pulls: ComparablePulls['otherPaper']) => pullWords(pulls.map(({ n }) => n));
  const unread = seriesTones.filter((tone) => !read.includes(tone));
  return [
    ...(otherPaper.length > 0
      ? [
          `Mixed papers: ${others(otherPaper)} on ${listWords(papers)} left out, only pulls on ${latest.paper.trim()}, the paper of the latest, are compared (pulls[${place(otherPaper[0]!.n)}].paper).`,
        ]
      : []),
    ...(otherAge.length > 0
      ? [
          `Mixed ages: ${others(otherAge)} left out, read at another age than the latest (pulls[${place(otherAge[0]!.n)}].age).`,
        ]
      : []),
    ...(latest.faults.length > 0
      ? [
          `Pull ${latest.n} has open faults: ${listWords(latest.faults)}. Steady says nothing of them (pulls[${place(latest.n)}].faults).`,
        ]
      : []),
    ...(unread.length > 0 && read.length > 0
      ? [`The ${listWords(unread)} were not read: the answer says nothing of them.`]
      : []),
    ...(scatter > 1
      ? [
          `These pulls scatter ${scatter.toFixed(1)} times as much as one reading does: ink, pressure or damp differ from pull to pull, or is it the photograph? Read one sheet twice. The intervals are widened for it.`,
        ]
      : []),
    ...(question.noise.tone >= byEye
      ? [
          'At this σ a reading is as rough as one by eye, by which steady usually can’t be known (noise.tone).',
        ]
      : []),
  ];
}
