import type { DraftShelf } from '../draftKeeper.ts';
import { earlierTyped } from './earlierTyped.ts';
import type { PullStep, PullTyped } from './pullDraft.ts';

interface Shelved {
  readonly typed: PullTyped;
  readonly step: PullStep;
}

const keyOf = (work: string) => `stonetone-pull-1-${work}`;

/** A pull that was begun for a work and not kept yet; null where there is none that can be read. */
export function shelvedPull(shelf: DraftShelf, work: string, begin: PullTyped): Shelved | null {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(keyOf(work)) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('typed' in kept) || !('step' in kept)) return null;
    const { typed, step } = kept as { typed: Partial<PullTyped>; step: PullStep };
    return { typed: { ...begin, ...earlierTyped(typed) }, step };
  } catch {
    return null;
  }
}

/** Puts it there; null takes it away. A camera may end the page that it was called from. */
export function shelvePull(shelf: DraftShelf, work: string, pull: Shelved | null): void {
  try {
    if (pull === null) shelf.removeItem(keyOf(work));
    else shelf.setItem(keyOf(work), JSON.stringify(pull));
  } catch {
    // A full or forbidden shelf costs only the reload.
  }
}
