import { upperFirst } from '../../foundation/upperFirst.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { say } from '../words/say.ts';

/** Why nothing was measured and what to do about it; `first` is the better thing to do next. */
export interface UnmeasuredWords {
  readonly why: string | null;
  readonly remedies: readonly string[];
  readonly first: 'anew' | 'again';
}

/** Words for a comparison that was refused, not done or stopped; the record's and failure's own words come first. */
export function unmeasuredWords(
  entry: Pick<ComparisonEntry, 'state' | 'record' | 'failure'>,
): UnmeasuredWords {
  const verdict = entry.record?.verdict;
  const why = asSentence(entry.record?.reason ?? entry.failure?.message ?? null);
  if (verdict === 'unmirrored')
    return {
      why,
      remedies: [
        say(
          'See whether the photograph of the print was turned over by the camera or a program; some turn pictures taken in a mirror. If so, turn it back and choose it again.',
        ),
        say('See whether both photographs show the stone, or both show prints: one of each is needed.'),
        say(
          'An offset or transfer print truly reads as the stone does; such a pair cannot be measured here yet.',
        ),
      ],
      first: 'anew',
    };
  if (verdict === 'no-match')
    return {
      why,
      remedies: [
        say('See whether this print came from this stone, in this state.'),
        say('Set the four marks on the print again: mark 1 where the stone’s top left came to lie.'),
        say('If less than half of the drawing is on the sheet, photograph more of it.'),
      ],
      first: 'anew',
    };
  if (entry.state === 'stopped')
    return { why: say('Photographs, marks and size are kept as they were.'), remedies: [], first: 'again' };
  const remedy = entry.failure?.remedy;
  const often = entry.failure?.code === 'internal' || entry.failure?.code.startsWith('measuring');
  return { why, remedies: remedy ? [remedy] : [], first: often ? 'again' : 'anew' };
}

/** With a capital and a full stop, whoever wrote it. */
function asSentence(words: string | null): string | null {
  if (!words) return null;
  return `${upperFirst(words)}${/[.!?]$/.test(words) ? '' : '.'}`;
}
