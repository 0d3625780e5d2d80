import type { PullKind } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { SeriesPull, WorkSeries } from '../../../records/workSeries.ts';
import { capital } from '../../../studio/proofs/seriesWords.ts';

/** What each kind of pull is called. */
export const pullKindWords: Readonly<Record<PullKind, string>> = {
  'trial-proof': 'trial proof',
  proof: 'proof',
  candidate: 'for approval',
  edition: 'edition',
  other: 'other',
};

/** The answer of a series as a headline. */
export function seriesHeadline({ answer, pulls }: Pick<WorkSeries, 'answer' | 'pulls'>): string {
  if (pulls.length === 0) return 'Add the first pull';
  const { state, since, plateau } = answer;
  switch (state) {
    case 'steady':
      return `Steady since pull ${since}`;
    case 'not-yet':
      return plateau ? `Not steady yet: from about pull ${Math.ceil(plateau.pull.value)}` : 'Not steady yet';
    case 'growing':
      return 'Still growing darker';
    case 'fading':
      return 'It prints paler from pull to pull';
    case 'cannot-tell':
      return 'Can’t tell yet whether it is steady';
    default:
      return state satisfies never;
  }
}

/** What to mind about an answer, without the places of its question that a file would be mended at. */
export function answerWarnings({ answer }: Pick<WorkSeries, 'answer'>): readonly string[] {
  return answer.warnings.map((words) =>
    capital(words.replaceAll(/\s*\((?:pulls\[\d+\]|noise|tolerance)[^)]*\)/g, '')),
  );
}

/** How old a print was when it was read: `5 min`, `2 h`, `3 days`; a word as it stands; null: `age not known`. */
export function pullAgeWords(age: number | string | null): string {
  if (age === null) return 'age not known';
  if (typeof age === 'string') return age;
  if (age < 1) return 'at once';
  if (age < 90) return `${Math.round(age)} min`;
  if (age < 36 * 60) return `${Math.round(age / 60)} h`;
  return `${Math.round(age / 1440)} days`;
}

/** How a pull was read, in two or three words. */
export function readWords({ how, readings }: Pick<SeriesPull, 'how' | 'readings'>): string {
  if (how === 'eye') return 'told by eye';
  if (how === 'unread') return 'not read';
  return readings > 1 ? `read ${readings} times` : 'read once';
}

/** Whether some photograph of a pull still waits or is being measured. */
export function isBeingRead({ photographs }: Pick<PullEntry, 'photographs'>): boolean {
  return photographs.some(
    ({ measuring }) => measuring?.state === 'waiting' || measuring?.state === 'measuring',
  );
}

/** Where the reading of a pull stands, for one without a reading; null where there is nothing to say. */
export function readingTrouble(pull: Pick<PullEntry, 'photographs'>): string | null {
  for (const { measuring } of pull.photographs) {
    if (measuring?.state === 'refused')
      return measuring.tones?.reason ?? 'It could not be laid on the stone.';
    if (measuring?.state === 'failed')
      return [measuring.failure?.message, measuring.failure?.remedy].filter(Boolean).join(' ');
    if (measuring?.state === 'cancelled') return 'Its measurement was cancelled.';
  }
  return null;
}
