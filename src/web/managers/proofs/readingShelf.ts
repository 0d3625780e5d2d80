import type { DraftShelf } from '../draftKeeper.ts';
import type { TakenPhotograph } from './pullDraft.ts';

/** A further reading of a pull while it is being entered. */
export interface ReadingTyped {
  readonly taken: TakenPhotograph | null;
  /** Minutes as typed, or `same` as on the first photograph. */
  readonly age: string;
}

const keyOf = (pull: string) => `stonetone-reading-1-${pull}`;

/** A reading that was begun for a pull and not kept yet; null where there is none that can be read. */
export function shelvedReading(shelf: DraftShelf, pull: string): ReadingTyped | null {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(keyOf(pull)) ?? 'null');
    return typeof kept === 'object' && kept !== null && 'taken' in kept && 'age' in kept
      ? (kept as ReadingTyped)
      : null;
  } catch {
    return null;
  }
}

/** Puts it there; null takes it away. */
export function shelveReading(shelf: DraftShelf, pull: string, typed: ReadingTyped | null): void {
  try {
    if (typed === null) shelf.removeItem(keyOf(pull));
    else shelf.setItem(keyOf(pull), JSON.stringify(typed));
  } catch {
    // A full or forbidden shelf costs only the reload.
  }
}
