import type { RunEvent } from '../../../records/run.ts';
import type { DraftShelf } from '../draftKeeper.ts';

const key = 'stonetone-who';

/** Whose hands this screen logs for; null where nobody said. */
export function readWho(shelf: DraftShelf): string | null {
  try {
    return shelf.getItem(key) || null;
  } catch {
    return null;
  }
}

/** Keeps it for as long as this browser keeps anything. */
export function keepWho(shelf: DraftShelf, who: string | null): void {
  try {
    if (who === null) shelf.removeItem(key);
    else shelf.setItem(key, who);
  } catch {
    // It holds for as long as the page is open.
  }
}

/** Everybody who logged something in a run, and who this screen is, each once. */
export function peopleOf(log: readonly RunEvent[], who: string | null): readonly string[] {
  const names = [...log.map(({ actor }) => actor), who].filter((name) => name !== null);
  return [...new Set(names)].sort();
}
