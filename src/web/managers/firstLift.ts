import type { Lift } from './sheetLift.ts';

/** About a third shows that there is a stone beneath, and leaves most of the print to be read. */
const wished = 0.34;
/** What the roll covers right of the fold, as a share of the sheet's width, with its lean. */
const rollShare = 0.13;

/**
 * The lift a picture opens with: near a third, but less where the roll would hide places that are marked.
 * @param markedByColumn how much is marked in each of equally wide columns from left to right, any unit; may be empty
 */
export function firstLift(markedByColumn: readonly number[]): Lift {
  const all = markedByColumn.reduce((sum, marked) => sum + marked, 0);
  if (all === 0) return wished;
  const cost = (lift: Lift) => {
    const hidden = markedByColumn
      .filter((_, column) => column / markedByColumn.length < lift + rollShare)
      .reduce((sum, marked) => sum + marked, 0);
    return hidden / all + (wished - lift);
  };
  const lifts = [0.34, 0.3, 0.26, 0.22, 0.18, 0.14];
  return lifts.reduce((best, lift) => (cost(lift) < cost(best) ? lift : best));
}
