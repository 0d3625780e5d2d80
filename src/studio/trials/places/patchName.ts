import { ordinal } from '../../../foundation/ordinal.ts';
import type { StonePatch } from '../../../records/testStone.ts';

/** What of a patch tells where it stands. */
type Placed = Pick<StonePatch, 'row' | 'column'> & { readonly id: string };

/** Names that squares had before they were read off the stone, such as `B3`, `B3.2` or, on a planned one, `2B5`. */
const earlierName = /^\d*[A-Z]+\d+(?:\.(\d+))?$/;
const nameByPlace = /^row \d+, .+?(?:, step (\d+))?$/;

/**
 * What a square is called: its row from the head and its place from the left, as one counts at the stone: `row 2, third`, and
 * with deposit steps in it `row 2, third, step 1`.
 * @param row from 1 @param place from 1 @param step from 1; null: the square is one patch
 */
export function squareName(row: number, place: number, step: number | null = null): string {
  const name = `row ${row}, ${ordinal(place)}`;
  return step === null ? name : `${name}, step ${step}`;
}

/** What a patch is called wherever people read of it: by its place where it stands in a row, else by its own name. */
export function patchName({ id, row, column }: Placed): string {
  if (row === null || column === null || !(earlierName.test(id) || nameByPlace.test(id))) return id;
  return squareName(row, column, stepOf(id));
}

/** Which deposit step of its square a patch is, from 1; null where the square is one patch. */
export function stepOf(id: string): number | null {
  const step = earlierName.exec(id)?.[1] ?? nameByPlace.exec(id)?.[1];
  return step === undefined ? null : Number(step);
}

/** May a patch that stands in no row go by this? Names of squares may not. */
export function isSquareName(id: string): boolean {
  return nameByPlace.test(id);
}

/**
 * Patches by name, in their order; neighbours of one row are told as from one to another, and only the first dozen lines.
 */
export function patchNames(patches: readonly Placed[]): string {
  const runs: Placed[][] = [];
  for (const patch of patches) {
    const before = runs.at(-1)?.at(-1);
    if (before && follows(before, patch)) runs.at(-1)!.push(patch);
    else runs.push([patch]);
  }
  const words = runs.map((run) => {
    const [first, last] = [run[0]!, run.at(-1)!];
    return run.length === 1 ? patchName(first) : `${patchName(first)} to ${ordinal(last.column!)}`;
  });
  const shown = runs.slice(0, 12);
  const rest = patches.length - shown.flat().length;
  return rest > 0 ? `${words.slice(0, 12).join('; ')} and ${rest} more` : words.join('; ');
}

function follows(before: Placed, patch: Placed): boolean {
  return (
    before.row !== null &&
    before.row === patch.row &&
    before.column !== null &&
    patch.column === before.column + 1 &&
    byPlace(before) &&
    byPlace(patch)
  );
}

/** Is it called by its place, and the whole of its square? */
function byPlace({ id }: Placed): boolean {
  return (earlierName.test(id) || nameByPlace.test(id)) && stepOf(id) === null;
}
