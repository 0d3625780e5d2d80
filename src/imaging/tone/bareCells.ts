import { median, medianAbsoluteDeviation, quantile } from '../../science/statistics/quantile.ts';
import type { CellGrid } from './cellGrid.ts';
import { fitSurface, type LightSurface, residualOf, surfaceTerms } from './lightSurface.ts';

/** What is known of a cell before looking at it. */
export const cellKind = { unknown: 0, expectedBare: 1, neverBare: 2, outside: 3 } as const;

export interface BareSearch {
  /** A `cellKind` per cell. */
  readonly kinds: Uint8Array;
  /** How far, in log light, a bare cell may lie from the smooth surface: stone mottles more than paper. */
  readonly toleranceLog: number;
  /** Whether cells outside the work rectangle look like its ground and may set the level. */
  readonly startOutside: boolean;
}

export interface BareCells {
  readonly surface: LightSurface;
  /** 1 where a cell shows bare ground. */
  readonly bare: Uint8Array;
}

/**
 * Finds the cells that show bare ground, and the smooth light over them: a quadratic in log light fitted to the brightest
 * common level, refitted a few times to the cells near it.
 * @returns null where no such level can be found.
 */
export function findBareCells(grid: CellGrid, search: BareSearch): BareCells | null {
  const all = Array.from({ length: grid.columns * grid.rows }, (_, cell) => cell).filter(
    (cell) => !Number.isNaN(grid.spread[cell]!),
  );
  const start = startCells(grid, search, all);
  let surface = fitSurface(grid, start);
  if (!surface) return null;
  const smooth = 1.8 * median(start.map((cell) => grid.spread[cell]!));
  let chosen: number[] = [];
  for (const widen of [3, 2, 1.3, 1, 1]) {
    const residual = residualOf(grid, surface);
    const level = modeOf(start.map((cell) => residual[cell]!));
    chosen = all.filter(
      (cell) =>
        search.kinds[cell] !== cellKind.neverBare &&
        grid.spread[cell]! <= smooth &&
        Math.abs(residual[cell]! - level) <= search.toleranceLog * widen &&
        sameColour(grid, surface!, cell, search.toleranceLog * widen),
    );
    const refitted = fitSurface(grid, chosen);
    if (!refitted) return null;
    surface = refitted;
  }
  const bare = new Uint8Array(grid.columns * grid.rows);
  for (const cell of chosen) bare[cell] = 1;
  return { surface, bare };
}

/** The cells to begin with: those expected bare, or the brighter ones everywhere where nothing is expected. */
function startCells(grid: CellGrid, search: BareSearch, all: readonly number[]): number[] {
  const outside = all.filter((cell) => search.kinds[cell] === cellKind.outside);
  const expected = all.filter((cell) => search.kinds[cell] === cellKind.expectedBare);
  const pool =
    expected.length >= 240
      ? expected
      : all.filter(
          (cell) => search.kinds[cell] === cellKind.unknown || search.kinds[cell] === cellKind.expectedBare,
        );
  const bright = brightCells(grid, pool);
  if (!search.startOutside) return bright;
  // Only outside cells that could be the same paper under the same light: the table is something else.
  const surface = fitSurface(grid, bright);
  if (!surface) return bright;
  const residual = residualOf(grid, surface);
  const paper = outside.filter((cell) => residual[cell]! > -0.15 && residual[cell]! < 0.25);
  return paper.length >= 400 ? paper : bright;
}

/** The brighter part of the cells, block by block, so that light falling off does not hide the far ones. */
function brightCells(grid: CellGrid, pool: readonly number[]): number[] {
  const blocks = new Map<number, number[]>();
  for (const cell of pool) {
    const column = Math.floor((cell % grid.columns) / 40);
    const row = Math.floor(cell / grid.columns / 40);
    const block = blocks.get(row * 1000 + column) ?? [];
    block.push(cell);
    blocks.set(row * 1000 + column, block);
  }
  return [...blocks.values()].flatMap((block) => {
    const least = quantile(
      block.map((cell) => grid.logLight[1][cell]!),
      0.6,
    );
    return block.filter((cell) => grid.logLight[1][cell]! >= least);
  });
}

/** The most common value: the middle of the densest bin of a third of the spread. */
function modeOf(values: readonly number[]): number {
  const centre = median(values);
  const width = Math.max(0.002, medianAbsoluteDeviation(values) / 2);
  const bins = new Map<number, number>();
  for (const value of values) {
    const bin = Math.round((value - centre) / width);
    bins.set(bin, (bins.get(bin) ?? 0) + 1);
  }
  let best = 0;
  for (const [bin, count] of bins) if (count > (bins.get(best) ?? 0)) best = bin;
  return centre + best * width;
}

/** Whether the channels differ from the surface alike: another material differs in colour. */
function sameColour(grid: CellGrid, surface: LightSurface, cell: number, tolerance: number): boolean {
  const terms = surfaceTerms(grid, cell);
  const residuals = surface.coefficients.map(
    (own, channel) =>
      grid.logLight[channel]![cell]! - terms.reduce((sum, term, i) => sum + term * own[i]!, 0),
  );
  return Math.max(...residuals) - Math.min(...residuals) <= 1.5 * tolerance;
}
