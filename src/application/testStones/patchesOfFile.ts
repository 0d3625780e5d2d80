import type { PatchGrid, StonePatch, TestFactor } from '../../records/testStone.ts';
import { squareName } from '../../studio/trials/places/patchName.ts';
import { layGrid } from '../../studio/trials/reading/layGrid.ts';

type Treatment = Readonly<Record<string, string>>;

/** What a list of patches says, as patches.json holds it. */
interface PatchList {
  readonly grid: PatchGrid | null;
  readonly strips: 'rows' | 'columns' | null;
  readonly rows: readonly Treatment[];
  readonly columns: readonly Treatment[];
  readonly factors: readonly TestFactor[] | null;
  readonly patches: readonly (Pick<StonePatch, 'id'> & Partial<StonePatch>)[];
}

/**
 * Every patch of a list: the grid's, given what its row and column got and then what is said of it alone, under the id that the
 * list names it by; and those that stand outside it. Factors that are not listed are those that some patch names, each given to patches.
 */
export function patchesOfFile(list: PatchList): {
  readonly patches: readonly StonePatch[];
  readonly factors: readonly TestFactor[];
} {
  const said = new Map(list.patches.map((patch) => [patch.id, patch]));
  const named = new Map(list.patches.map(({ id }) => [squareOf(id), id]));
  const laid = list.grid === null ? [] : layGrid(list.grid);
  const patches = laid.map((patch) => {
    const own = said.get(named.get(patch.id) ?? patch.id);
    if (own) said.delete(own.id);
    const treatment = {
      ...list.rows[patch.row! - 1],
      ...list.columns[patch.column! - 1],
      ...own?.treatment,
    };
    return { ...patch, strip: stripOf(patch, list.strips), ...given(own), treatment };
  });
  for (const own of said.values()) patches.push(alone(own));
  const names = new Set(patches.flatMap(({ treatment }) => Object.keys(treatment)));
  const factors = list.factors ?? [...names].map((name) => ({ name, givenTo: 'patch' as const }));
  return { patches, factors };
}

/** A square named by a row's letter and a number, as in `B3` or `B3.2`, goes by that in this list. */
function squareOf(id: string): string {
  const [, letters, column, step] = /^([A-Z]+)(\d+)(?:\.(\d+))?$/.exec(id) ?? [];
  if (letters === undefined) return id;
  const row = [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0);
  return squareName(row, Number(column), step === undefined ? null : Number(step));
}

function stripOf({ row, column }: StonePatch, strips: PatchList['strips']): string | null {
  if (strips === null) return null;
  return String(strips === 'rows' ? row : column);
}

function given(own: Partial<StonePatch> | undefined): Partial<StonePatch> {
  return Object.fromEntries(Object.entries(own ?? {}).filter(([, value]) => value !== undefined));
}

function alone(own: Pick<StonePatch, 'id'> & Partial<StonePatch>): StonePatch {
  return {
    square: own.id,
    strip: null,
    row: null,
    column: null,
    polygonMm: [],
    intention: 'image',
    treatment: {},
    note: '',
    ...given(own),
    id: own.id,
  };
}
