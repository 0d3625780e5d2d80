import { type Drawing, drawingOf } from './zoneDrawing.ts';

/** A drawing that was not saved, and the version of the work that it started from. */
export interface UnsavedDrawing {
  readonly version: number;
  readonly drawing: Drawing;
}

/** The part of the browser's storage that is used here. */
export type DrawingShelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const keyOf = (work: string) => `stonetone-drawing-1-${work}`;

/** Puts an unsaved drawing on the shelf, so that a reload or a closed lid loses nothing; null takes it off. */
export function keepUnsaved(shelf: DrawingShelf, work: string, unsaved: UnsavedDrawing | null): void {
  try {
    if (unsaved) shelf.setItem(keyOf(work), JSON.stringify(unsaved));
    else shelf.removeItem(keyOf(work));
  } catch {
    // A full or forbidden shelf costs only the reload: the drawing itself is still on the desk.
  }
}

/** What lies on the shelf for a work; null where nothing readable does. */
export function readUnsaved(shelf: DrawingShelf, work: string): UnsavedDrawing | null {
  try {
    const kept = JSON.parse(shelf.getItem(keyOf(work)) ?? 'null') as UnsavedDrawing | null;
    if (!kept || typeof kept.version !== 'number' || !Array.isArray(kept.drawing.zones)) return null;
    const { outline } = kept.drawing;
    return { version: kept.version, drawing: { ...drawingOf(kept.drawing), outline: outline ?? null } };
  } catch {
    return null;
  }
}
