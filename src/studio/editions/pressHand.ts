import type { LedgerEntry } from '../../records/ledger.ts';
import { countingEntries } from './countingEntries.ts';

/** What was done to the stone at the press last: printing lays it bare, a pause under gum covers it. */
export interface PressHand {
  /** ISO 8601 with zone, by the clock of who logged it. */
  readonly at: string;
  readonly gummed: boolean;
}

/** The same from the last entries of a ledger, in order; null where none of them touches the stone. */
export function pressHand(entries: readonly LedgerEntry[]): PressHand | null {
  const last = countingEntries(entries).findLast(({ kind }) => touching.has(kind));
  return last ? { at: last.at, gummed: last.kind === 'paused' && last.payload.gummed } : null;
}

const touching: ReadonlySet<LedgerEntry['kind']> = new Set(['impression', 'charged', 'resumed', 'paused']);
