import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { PullKind } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { SeriesPull, WorkSeries } from '../../../records/workSeries.ts';
import { say } from '../../words/say.ts';

/** What each kind of pull is called. */
export const pullKindWords: Readonly<Record<PullKind, string>> = {
  'trial-proof': say('trial proof'),
  proof: say('proof'),
  'for-approval': say('for approval'),
  edition: say('edition'),
  other: say('other'),
};

/** The answer of a series as a headline. */
export function seriesHeadline({ answer, pulls }: Pick<WorkSeries, 'answer' | 'pulls'>): string {
  if (pulls.length === 0) return say('Enter the first pull');
  const { state, since, plateau } = answer;
  switch (state) {
    case 'steady':
      return say('Steady since pull {since}', { since });
    case 'not-yet':
      return plateau
        ? say('Not steady yet: from about pull {pull}', { pull: Math.ceil(plateau.pull.value) })
        : say('Not steady yet');
    case 'growing':
      return say('Still growing darker');
    case 'fading':
      return say('It prints paler from pull to pull');
    case 'cannot-tell':
      return say('Can’t tell yet whether it is steady');
    default:
      return state satisfies never;
  }
}

/** What to mind about an answer, without the places of its question that a file would be mended at. */
export function answerWarnings({ answer }: Pick<WorkSeries, 'answer'>): readonly string[] {
  return answer.warnings.map((words) =>
    upperFirst(words.replaceAll(/\s*\((?:pulls\[\d+\]|noise|tolerance)[^)]*\)/g, '')),
  );
}

/** How old a print was when it was read: `5 min`, `2 h`, `3 days`; a word as it stands; null: `age not known`. */
export function pullAgeWords(age: number | string | null): string {
  if (age === null) return say('age not known');
  if (typeof age === 'string') return age;
  if (age < 1) return say('at once');
  if (age < 90) return say('{age} min', { age: Math.round(age) });
  if (age < 36 * 60) return say('{age} h', { age: Math.round(age / 60) });
  return say('{age} days', { age: Math.round(age / 1440) });
}

/** How a pull was read, in two or three words. */
export function readWords({ how, readings }: Pick<SeriesPull, 'how' | 'readings'>): string {
  if (how === 'eye') return say('told by eye');
  if (how === 'unread') return say('not read');
  return say('{readings, plural, one {read once} other {read {readings} times}}', { readings });
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
      return measuring.tones?.reason ?? say('It could not be laid on the stone.');
    if (measuring?.state === 'not-done')
      return [measuring.failure?.message, measuring.failure?.remedy].filter(Boolean).join(' ');
    if (measuring?.state === 'stopped') return say('Its measurement was stopped.');
  }
  return null;
}
