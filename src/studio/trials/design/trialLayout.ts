import { failure } from '../../../foundation/failure.ts';
import { type Random, seededRandom } from '../../../foundation/random.ts';
import { fail, ok, type Result } from '../../../foundation/result.ts';
import type { TrialAssignment, TrialPatch, TrialWish } from '../../../records/trialDesign.ts';
import { squareName } from '../places/patchName.ts';
import { drawnTreatments, type StoneShape, stoneShape } from './drawnTreatments.ts';
import { leastPatchFor, mostPatchMm } from './patchSize.ts';
import { shuffled } from './shuffled.ts';
import { alwaysInPlace } from './trialAudit.ts';

/** Patches laid out on their stones, and what each gets. */
export interface TrialLayout {
  readonly patchMm: number;
  readonly patches: readonly TrialPatch[];
  readonly list: readonly TrialAssignment[];
}

/** Lots that put every treatment at one place each time are drawn again, this often at most. */
const mostDraws = 20;

/**
 * Lays a trial out as its wish says, places drawn by lot anew for every stone and block, the same for the same seed.
 * Fisher, R. A. (1935), The Design of Experiments (drawing lots, Latin squares); Yates, F. (1935), doi 10.2307/2983638 (whole and
 * sub-plots).
 * @returns `trial-does-not-fit` with how many patches do.
 */
export function trialLayout(wish: TrialWish): Result<TrialLayout> {
  const { shape, grid, least, wanted, fits } = patchesOn(wish);
  if (!fits) {
    return fail(
      failure('trial-does-not-fit', {
        patches: shape.across * shape.down * shape.perBlock,
        side: Math.ceil(Math.max(least, wanted)),
        stone: `${wish.stone.widthMm} × ${wish.stone.heightMm} mm`,
        fits: Math.max(0, Math.floor(grid.patchMm)),
      }),
    );
  }
  const random = seededRandom(wish.seed);
  let drawn = drawAll(wish, shape, grid, wanted, random);
  for (let draw = 1; draw < mostDraws && alwaysInPlace(wish, drawn); draw++)
    drawn = drawAll(wish, shape, grid, wanted, random);
  return ok({ patchMm: wanted, ...drawn });
}

/** Is there room on the stone, whatever lots would be drawn? */
export function fitsOnStone(wish: TrialWish): boolean {
  return patchesOn(wish).fits;
}

function patchesOn(wish: TrialWish) {
  const shape = stoneShape(wish);
  const grid = largestGrid(wish, shape);
  const least = leastPatchFor(wish);
  const wanted = wish.patchMm ?? Math.max(least, Math.min(mostPatchMm, grid.patchMm));
  return { shape, grid, least, wanted, fits: grid.patchMm >= Math.max(least, wanted) };
}

function drawAll(
  wish: TrialWish,
  shape: StoneShape,
  grid: Grid,
  side: number,
  random: Random,
): Pick<TrialLayout, 'patches' | 'list'> {
  const ofStones = wish.perStone
    ? shuffled(
        Array.from(
          { length: wish.stones },
          (_, k) => wish.perStone!.levels[k % wish.perStone!.levels.length]!,
        ),
        random,
      )
    : null;
  const patches: TrialPatch[] = [];
  const list: TrialAssignment[] = [];
  for (let stone = 1; stone <= wish.stones; stone++)
    for (const [block, treatments] of drawnTreatments(wish, shape, random).entries()) {
      const strip = String(block + 1);
      for (const [index, treatment] of treatments.entries()) {
        const row = Math.floor(block / shape.across) * grid.rows + Math.floor(index / grid.columns) + 1;
        const column = (block % shape.across) * grid.columns + (index % grid.columns) + 1;
        const code = `stone ${stone}, ${squareName(row, column)}`;
        const polygonMm = square(wish, shape, grid, side, block, index);
        patches.push({ code, stone, strip, row, column, polygonMm });
        list.push({ code, ...treatment, ...(ofStones ? { perStone: ofStones[stone - 1]! } : {}) });
      }
    }
  return { patches, list };
}

/** How the patches of one block stand. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** The largest patch that fits so. */
  readonly patchMm: number;
}

/** How a block's patches stand in rows so that they are largest. */
function largestGrid(wish: TrialWish, shape: StoneShape): Grid {
  const { widthMm, heightMm } = wish.stone;
  const { sidesMm, endsMm } = wish.border;
  const grids = Array.from({ length: shape.oneRow ? 1 : shape.perBlock }, (_, index): Grid => {
    const rows = index + 1;
    const columns = Math.ceil(shape.perBlock / rows);
    const gapsAcross = (shape.across - 1) * shape.gapMm + shape.across * (columns - 1) * wish.gutterMm;
    const gapsDown = (shape.down - 1) * shape.gapMm + shape.down * (rows - 1) * wish.gutterMm;
    const across = (widthMm - 2 * sidesMm - gapsAcross) / (shape.across * columns);
    const down = (heightMm - 2 * endsMm - gapsDown) / (shape.down * rows);
    return { rows, columns, patchMm: Math.min(across, down) };
  });
  return grids.reduce((best, grid) => (grid.patchMm > best.patchMm ? grid : best));
}

/** The patch's corners; what is laid out stands in the middle of the stone. */
function square(
  wish: TrialWish,
  shape: StoneShape,
  { rows, columns }: Grid,
  side: number,
  block: number,
  index: number,
) {
  const blockHeight = rows * side + (rows - 1) * wish.gutterMm;
  const blockWidth = columns * side + (columns - 1) * wish.gutterMm;
  const allHeight = shape.down * blockHeight + (shape.down - 1) * shape.gapMm;
  const allWidth = shape.across * blockWidth + (shape.across - 1) * shape.gapMm;
  const left =
    (wish.stone.widthMm - allWidth) / 2 +
    (block % shape.across) * (blockWidth + shape.gapMm) +
    (index % columns) * (side + wish.gutterMm);
  const top =
    (wish.stone.heightMm - allHeight) / 2 +
    Math.floor(block / shape.across) * (blockHeight + shape.gapMm) +
    Math.floor(index / columns) * (side + wish.gutterMm);
  return [
    [left, top],
    [left + side, top],
    [left + side, top + side],
    [left, top + side],
  ] as const;
}
