import type { StonePatch, TestStoneDraft } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import type { DrawingShelf } from '../unsavedDrawing.ts';

/** What is drawn and typed of a test stone's patches. */
export type PatchesSaid = Pick<TestStoneDraft, 'patches' | 'factors' | 'grid'>;

/** Patches that were not saved, and what was kept when they were begun. */
export interface UnsavedPatches {
  readonly base: PatchesSaid;
  readonly said: PatchesSaid;
  /** The points of an outline that is being drawn; null while none is. */
  readonly outline: readonly Point[] | null;
}

const keyOf = (stone: string) => `stonetone-patches-1-${stone}`;

/** Puts unsaved patches on the shelf, so that a reload or another page loses nothing; null takes them off. */
export function keepPatches(shelf: DrawingShelf, stone: string, unsaved: UnsavedPatches | null): void {
  try {
    if (unsaved) shelf.setItem(keyOf(stone), JSON.stringify(unsaved));
    else shelf.removeItem(keyOf(stone));
  } catch {
    // A full or forbidden shelf costs only the reload: the patches themselves are still in the page.
  }
}

/** What lies on the shelf for a test stone; null where nothing readable does. */
export function readPatches(shelf: DrawingShelf, stone: string): UnsavedPatches | null {
  try {
    const kept = JSON.parse(shelf.getItem(keyOf(stone)) ?? 'null') as UnsavedPatches | null;
    if (!kept || ![kept.base, kept.said].every(areSaid)) return null;
    return { base: kept.base, said: kept.said, outline: kept.outline ?? null };
  } catch {
    return null;
  }
}

/** What a save of a test stone would take of its patches. */
export function saidOf({ patches, factors, grid }: PatchesSaid): PatchesSaid {
  return { patches, factors, grid };
}

/** Whether two would be saved as the same. */
export function sameSaid(a: PatchesSaid, b: PatchesSaid): boolean {
  return plain(a) === plain(b);
}

/** Fields in one order, whoever wrote them; levels by name. */
function plain({ patches, factors, grid }: PatchesSaid): string {
  const patch = (one: StonePatch) => [
    ...[one.id, one.square, one.strip, one.row, one.column, one.intention, one.note],
    Object.entries(one.treatment).toSorted(([first], [second]) => (first < second ? -1 : 1)),
    one.polygonMm,
  ];
  const laid = grid && [
    ...[grid.rows, grid.columns, grid.steps, grid.turnDegrees],
    ...[grid.originMm, grid.squareMm, grid.gutterMm],
  ];
  return JSON.stringify([patches.map(patch), factors.map(({ name, givenTo }) => [name, givenTo]), laid]);
}

function areSaid(said: PatchesSaid | undefined): boolean {
  return Array.isArray(said?.patches) && Array.isArray(said.factors) && typeof said.grid === 'object';
}
