import type { Change } from '../../records/comparison.ts';

interface ChangeWords {
  /** The one word that stands beside a zone. */
  readonly word: string;
  /** What it means at the stone, in one clause. */
  readonly meaning: string;
}

const words: Readonly<Record<Change, ChangeWords>> = {
  held: { word: 'held', meaning: 'printed as drawn, within what this measurement accepts' },
  lost: { word: 'lost', meaning: 'drawn, but hardly any printed' },
  lighter: { word: 'lighter', meaning: 'printed, but lighter than drawn' },
  darker: { word: 'darker', meaning: 'printed darker than drawn, still open' },
  filled: { word: 'filled in', meaning: 'the small whites are gone' },
  scum: { word: 'scum', meaning: 'ink where the stone is bare' },
  undecided: { word: 'undecided', meaning: 'the difference is no larger than the uncertainty' },
};

/** The word shown for a change. Total over all changes. */
export function changeWord(change: Change): string {
  return words[change].word;
}

/** What a change means at the stone, as one clause without a full stop. Total over all changes. */
export function changeMeaning(change: Change): string {
  return words[change].meaning;
}
