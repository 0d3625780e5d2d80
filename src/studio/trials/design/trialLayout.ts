import { failure } from '../../../foundation/failure.ts';
import { type Random, seededRandom } from '../../../foundation/random.ts';
import { fail, ok, type Result } from '../../../foundation/result.ts';
import type { TrialAssignment, TrialPatch, TrialWish } from '../../../records/trialDesign.ts';

/**
 * A patch smaller than this can't be read: its tone is a mean over what is left when 1.4 mm each side is left out. Our rule.
 */
export const leastPatchMm = 12;
/** Larger patches say no more. Our rule. */
export const mostPatchMm = 40;

/** Patches laid out on their stones, and what each gets. */
export interface TrialLayout {
  readonly patchMm: number;
  readonly patches: readonly TrialPatch[];
  readonly list: readonly TrialAssignment[];
}

/**
 * Lays a trial out: on every stone each level of the hard treatment on its strips, one above another, every level of the easy
 * one in each strip; strips and patches in an order drawn anew for every stone and strip, the same for the same seed.
 * Fisher, R. A. (1935), The Design of Experiments (drawing lots); Yates, F. (1935), doi 10.2307/2983638 (whole and sub-plots).
 * @returns `trial-does-not-fit` with how many patches do.
 */
export function trialLayout(wish: TrialWish): Result<TrialLayout> {
  const strips = (wish.whole?.levels.length ?? 1) * wish.stripRepeats;
  const perStrip = wish.sub.levels.length * wish.patchRepeats;
  const grid = largestGrid(wish, strips, perStrip);
  const wanted = wish.patchMm ?? Math.min(mostPatchMm, grid.patchMm);
  if (grid.patchMm < Math.max(leastPatchMm, wanted)) {
    return fail(
      failure('trial-does-not-fit', {
        patches: strips * perStrip,
        side: Math.max(leastPatchMm, wanted),
        stone: `${wish.stone.widthMm} × ${wish.stone.heightMm} mm`,
        fits: Math.max(0, Math.floor(grid.patchMm)),
      }),
    );
  }
  const random = seededRandom(wish.seed);
  const patches: TrialPatch[] = [];
  const list: TrialAssignment[] = [];
  for (let stone = 1; stone <= wish.stones; stone++) {
    const wholes = shuffled(repeated(wish.whole?.levels ?? [null], wish.stripRepeats), random);
    for (const [row, whole] of wholes.entries()) {
      const strip = letterOf(row);
      const subs = shuffled(repeated(wish.sub.levels, wish.patchRepeats), random);
      for (const [index, sub] of subs.entries()) {
        const code = `${stone}${strip}${index + 1}`;
        patches.push({ code, stone, strip, polygonMm: square(wish, grid, wanted, row, index) });
        list.push({ code, whole, sub });
      }
    }
  }
  return ok({ patchMm: wanted, patches, list });
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** The largest patch that fits so. */
  readonly patchMm: number;
}

/** How a strip's patches stand in rows so that they are largest. */
function largestGrid(wish: TrialWish, strips: number, perStrip: number): Grid {
  const { widthMm, heightMm } = wish.stone;
  const { sidesMm, endsMm } = wish.border;
  const grids = Array.from({ length: perStrip }, (_, index): Grid => {
    const rows = index + 1;
    const columns = Math.ceil(perStrip / rows);
    const across = (widthMm - 2 * sidesMm - (columns - 1) * wish.gutterMm) / columns;
    const gaps = (strips - 1) * wish.stripGutterMm + strips * (rows - 1) * wish.gutterMm;
    const down = (heightMm - 2 * endsMm - gaps) / (strips * rows);
    return { rows, columns, patchMm: Math.min(across, down) };
  });
  return grids.reduce((best, grid) => (grid.patchMm > best.patchMm ? grid : best));
}

/** The patch's corners; what is laid out stands in the middle of the stone. */
function square(wish: TrialWish, { rows, columns }: Grid, side: number, strip: number, index: number) {
  const strips = (wish.whole?.levels.length ?? 1) * wish.stripRepeats;
  const stripHeight = rows * side + (rows - 1) * wish.gutterMm;
  const allHeight = strips * stripHeight + (strips - 1) * wish.stripGutterMm;
  const allWidth = columns * side + (columns - 1) * wish.gutterMm;
  const left = (wish.stone.widthMm - allWidth) / 2 + (index % columns) * (side + wish.gutterMm);
  const top =
    (wish.stone.heightMm - allHeight) / 2 +
    strip * (stripHeight + wish.stripGutterMm) +
    Math.floor(index / columns) * (side + wish.gutterMm);
  return [
    [left, top],
    [left + side, top],
    [left + side, top + side],
    [left, top + side],
  ] as const;
}

/** A, B, … Z, AA, AB, … */
function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

function repeated<Item>(items: readonly Item[], times: number): Item[] {
  return items.flatMap((item) => Array.from({ length: times }, () => item));
}

/** Fisher and Yates' shuffle. */
function shuffled<Item>(items: readonly Item[], random: Random): Item[] {
  const drawn = [...items];
  for (let last = drawn.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [drawn[last], drawn[other]] = [drawn[other]!, drawn[last]!];
  }
  return drawn;
}
