import type { Random } from '../../../foundation/random.ts';
import type { TrialAssignment, TrialWish } from '../../../records/trialDesign.ts';
import { shuffled } from './shuffled.ts';

type Treatment = Pick<TrialAssignment, 'whole' | 'sub'>;

/** How blocks lie on every stone of a trial; a block is a strip, a part of the stone, or a row. */
export interface StoneShape {
  readonly across: number;
  readonly down: number;
  readonly perBlock: number;
  /** Bare stone between blocks. */
  readonly gapMm: number;
  /** A block's patches must stand in one row. */
  readonly oneRow: boolean;
}

/** Every combination of the strip's and the patch's treatment. */
export function combinationsOf({ whole, sub }: Pick<TrialWish, 'whole' | 'sub'>): Treatment[] {
  return (whole?.levels ?? [null]).flatMap((one) => sub.levels.map((other) => ({ whole: one, sub: other })));
}

/** How many blocks a stone has, where they lie, and how many patches each holds. */
export function stoneShape(wish: TrialWish): StoneShape {
  const combinations = combinationsOf(wish).length;
  const layout = wish.layout ?? 'split-plot';
  switch (layout) {
    case 'split-plot':
      return {
        across: 1,
        down: (wish.whole?.levels.length ?? 1) * wish.stripRepeats,
        perBlock: wish.sub.levels.length * wish.patchRepeats,
        gapMm: wish.stripGutterMm,
        oneRow: false,
      };
    case 'blocked': {
      const blocks = wish.blocks ?? 'head-tail';
      return {
        across: blocks === 'left-right' || blocks === 'both' ? 2 : 1,
        down: blocks === 'head-tail' || blocks === 'both' ? 2 : 1,
        perBlock: combinations * wish.patchRepeats,
        gapMm: wish.stripGutterMm,
        oneRow: false,
      };
    }
    case 'row-column':
      return {
        across: 1,
        down: rowsOf(wish),
        perBlock: combinations,
        gapMm: wish.gutterMm,
        oneRow: true,
      };
    default:
      return layout satisfies never;
  }
}

/** Rows of a row-column trial: no more than combinations; one alone is no row-column trial, so two at least. */
export function rowsOf(wish: Pick<TrialWish, 'whole' | 'sub' | 'patchRepeats'>): number {
  const combinations = combinationsOf(wish).length;
  return Math.min(combinations, Math.max(Math.min(2, combinations), wish.patchRepeats));
}

/** What the patches of one stone get, block by block, drawn by lot. */
export function drawnTreatments(wish: TrialWish, shape: StoneShape, random: Random): Treatment[][] {
  const layout = wish.layout ?? 'split-plot';
  switch (layout) {
    case 'split-plot':
      return shuffled(repeated(wish.whole?.levels ?? [null], wish.stripRepeats), random).map((whole) =>
        shuffled(repeated(wish.sub.levels, wish.patchRepeats), random).map((sub) => ({ whole, sub })),
      );
    case 'blocked':
      return Array.from({ length: shape.across * shape.down }, () =>
        shuffled(repeated(combinationsOf(wish), wish.patchRepeats), random),
      );
    case 'row-column':
      return latinRows(combinationsOf(wish), shape.down, random);
    default:
      return layout satisfies never;
  }
}

/** A cyclic square with its rows, columns and letters drawn by lot, as many rows of it as are wanted. */
function latinRows<Item>(items: readonly Item[], rows: number, random: Random): Item[][] {
  const letters = shuffled(items, random);
  const places = items.map((_, index) => index);
  const columns = shuffled(places, random);
  return shuffled(places, random)
    .slice(0, rows)
    .map((shift) => columns.map((column) => letters[(column + shift) % items.length]!));
}

function repeated<Item>(items: readonly Item[], times: number): Item[] {
  return items.flatMap((item) => Array.from({ length: times }, () => item));
}
