import { median, medianAbsoluteDeviation, quantile } from '../../science/statistics/quantile.ts';
import type { CellGrid } from './cellGrid.ts';
import { fitSurface, type LightSurface, residualOf, residualPlanes } from './lightSurface.ts';

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
  const { cells: start, valleyLog } = startCells(grid, search, all);
  let surface = fitSurface(grid, start);
  if (!surface) return null;
  const smooth = 1.8 * median(start.map((cell) => grid.spread[cell]!));
  let chosen: number[] = [];
  for (const widen of search.startOutside ? fromPaper : fromBright) {
    const planes = residualPlanes(grid, surface);
    const residual = planes[0]!.map((value, cell) => (value + planes[1]![cell]! + planes[2]![cell]!) / 3);
    const level = modeOf(start.map((cell) => residual[cell]!));
    chosen = all.filter(
      (cell) =>
        search.kinds[cell] !== cellKind.neverBare &&
        grid.spread[cell]! <= smooth &&
        residual[cell]! - level <= search.toleranceLog * widen &&
        level - residual[cell]! <= Math.min(search.toleranceLog * widen, valleyLog) &&
        colourGap(planes, cell) <= 1.5 * search.toleranceLog * widen,
    );
    const refitted = fitSurface(grid, chosen);
    if (!refitted) return null;
    surface = refitted;
  }
  const bare = new Uint8Array(grid.columns * grid.rows);
  for (const cell of chosen) bare[cell] = 1;
  return { surface, bare };
}

/**
 * How far beyond the tolerance each round looks. Bright cells are a rough start; clean paper is a good one, and looking far
 * from it would let a faint scum back in.
 */
const fromBright = [3, 2, 1.3, 1, 1];
const fromPaper = [1.4, 1.2, 1, 1];

interface Start {
  readonly cells: readonly number[];
  /** How far below their level, in log light, a darker level begins that is not bare ground; Infinity where none is seen. */
  readonly valleyLog: number;
}

/** The cells to begin with: those expected bare, or the brighter ones everywhere where nothing is expected. */
function startCells(grid: CellGrid, search: BareSearch, all: readonly number[]): Start {
  const expected = all.filter((cell) => search.kinds[cell] === cellKind.expectedBare);
  const pool =
    expected.length >= 240
      ? expected
      : all.filter(
          (cell) => search.kinds[cell] === cellKind.unknown || search.kinds[cell] === cellKind.expectedBare,
        );
  const bright = brightCells(grid, pool);
  if (!search.startOutside) return { cells: bright, valleyLog: Number.POSITIVE_INFINITY };
  return cleanestPaper(grid, search, all, pool, bright);
}

/** Light by which paper under the same lamps may differ from place to place: anything else outside is table. */
const paperRange = { darker: -0.15, brighter: 0.25 };
/** Width of a bin of log light, and the share of the fullest bin that makes a level of its own. */
const binLog = 0.01;
const leastPeakShare = 0.12;

/**
 * Paper shows nothing brighter than itself: of the levels at which many cells lie, inside the rectangle and round it, the
 * brightest is clean paper, and a scum that covers more of the sheet doesn't pass for it.
 */
function cleanestPaper(
  grid: CellGrid,
  search: BareSearch,
  all: readonly number[],
  pool: readonly number[],
  bright: readonly number[],
): Start {
  const rough: Start = { cells: bright, valleyLog: Number.POSITIVE_INFINITY };
  const surface = fitSurface(grid, bright);
  if (!surface) return rough;
  const residual = residualOf(grid, surface);
  const quiet = 1.8 * median(bright.map((cell) => grid.spread[cell]!));
  const outside = all.filter((cell) => search.kinds[cell] === cellKind.outside);
  const paper = [...pool, ...outside].filter(
    (cell) =>
      grid.spread[cell]! <= quiet &&
      residual[cell]! > paperRange.darker &&
      residual[cell]! < paperRange.brighter,
  );
  const { level, valleyLog } = brightestLevel(paper.map((cell) => residual[cell]!));
  const below = Math.min(2 * search.toleranceLog, valleyLog);
  const near = paper.filter(
    (cell) => residual[cell]! >= level - below && residual[cell]! <= level + 2 * search.toleranceLog,
  );
  return near.length >= 400 ? { cells: near, valleyLog } : rough;
}

/** A darker level is another tone when it lies so far off and so few cells lie between. */
const apart = { leastLog: 0.03, valleyShare: 0.6 };

/** The brightest local peak of the histogram that holds a fair share of the cells, and the valley below it. */
function brightestLevel(values: readonly number[]): { readonly level: number; readonly valleyLog: number } {
  const counts = new Map<number, number>();
  for (const value of values) {
    const bin = Math.round(value / binLog);
    counts.set(bin, (counts.get(bin) ?? 0) + 1);
  }
  const smooth = (bin: number) => [-1, 0, 1].reduce((sum, step) => sum + (counts.get(bin + step) ?? 0), 0);
  const bins = [...counts.keys()].toSorted((a, b) => b - a);
  const fullest = Math.max(...bins.map(smooth));
  const peak = bins.find(
    (bin) =>
      smooth(bin) >= leastPeakShare * fullest &&
      smooth(bin) >= smooth(bin - 1) &&
      smooth(bin) >= smooth(bin + 1),
  );
  if (peak === undefined) return { level: 0, valleyLog: Number.POSITIVE_INFINITY };
  const darker = bins.filter((bin) => (peak - bin) * binLog >= apart.leastLog);
  const next = darker.reduce<number | null>(
    (best, bin) => (best === null || smooth(bin) > smooth(best) ? bin : best),
    null,
  );
  if (next === null) return { level: peak * binLog, valleyLog: Number.POSITIVE_INFINITY };
  let valley = peak;
  for (let bin = peak; bin > next; bin--) if (smooth(bin) < smooth(valley)) valley = bin;
  const distinct = smooth(valley) < apart.valleyShare * Math.min(smooth(peak), smooth(next));
  return {
    level: peak * binLog,
    valleyLog: distinct ? Math.max(1, peak - valley) * binLog : Number.POSITIVE_INFINITY,
  };
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

/** How far apart the channels' departures from the surface lie: another material differs in colour. */
function colourGap(planes: readonly Float32Array[], cell: number): number {
  const [red, green, blue] = [planes[0]![cell]!, planes[1]![cell]!, planes[2]![cell]!];
  return Math.max(red, green, blue) - Math.min(red, green, blue);
}
