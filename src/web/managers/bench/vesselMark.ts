import type { PouredUnit } from '../../../records/run.ts';
import type { DraftShelf } from '../draftKeeper.ts';

/** Smallest marks of what is at hand to read amounts on. */
export const markSteps: Readonly<Record<PouredUnit, readonly number[]>> = { ml: [5, 1], g: [1, 0.1] };

const keyOf = (unit: PouredUnit) => `stonetone-bench-mark-${unit}`;

/** The mark that was read on last at this device; null: not said. */
export function readMark(shelf: DraftShelf, unit: PouredUnit): number | null {
  try {
    const kept = Number(shelf.getItem(keyOf(unit)));
    return markSteps[unit].includes(kept) ? kept : null;
  } catch {
    return null;
  }
}

export function keepMark(shelf: DraftShelf, unit: PouredUnit, mark: number | null): void {
  try {
    shelf.setItem(keyOf(unit), String(mark));
  } catch {
    // It holds for as long as the page is open.
  }
}
