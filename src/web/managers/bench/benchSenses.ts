import type { DraftShelf } from '../draftKeeper.ts';

/** How the bench calls; each can be off. */
export interface BenchSenses {
  readonly voice: boolean;
  readonly sound: boolean;
  readonly buzz: boolean;
}

const key = 'stonetone-bench-senses';
const all: BenchSenses = { voice: true, sound: true, buzz: true };

/** As this browser was told before; everything on at first. */
export function readSenses(shelf: DraftShelf): BenchSenses {
  try {
    const kept = JSON.parse(shelf.getItem(key) ?? '{}') as Partial<BenchSenses> | null;
    return { voice: kept?.voice !== false, sound: kept?.sound !== false, buzz: kept?.buzz !== false };
  } catch {
    return all;
  }
}

export function keepSenses(shelf: DraftShelf, senses: BenchSenses): void {
  try {
    shelf.setItem(key, JSON.stringify(senses));
  } catch {
    // It holds for as long as the page is open.
  }
}
