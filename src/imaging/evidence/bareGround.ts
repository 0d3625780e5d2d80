import type { FeatureReading } from '../../records/suspects.ts';
import { median, medianAbsoluteDeviation, quantile } from '../../science/statistics/quantile.ts';
import { bareUpTo, cellMm, type EvidenceGrid } from './evidenceGrid.ts';
import { reading } from './reading.ts';

const borderMm = 10;
const innerMm = 16;
/** Bare cells nearer to marks than this may hold what those spread. */
const clearMm = 4;
const fewestCells = 25;

/**
 * What bare stone prints: grey along the border beyond that of the middle, grey in the middle, and shapes in it (how much
 * its darkest twentieth stands above its median). null where there is too little bare stone.
 */
export function bareGround(grid: EvidenceGrid): {
  borderGrey: FeatureReading | null;
  bareGrey: FeatureReading | null;
  bareShapes: FeatureReading | null;
} {
  const clear = clearOfMarks(grid, Math.round(clearMm / cellMm));
  const border: number[] = [];
  const inner: number[] = [];
  const doubts: number[] = [];
  for (let cell = 0; cell < clear.length; cell++) {
    if (!clear[cell]) continue;
    const away = Math.min(cell % grid.columns, grid.columns - 1 - (cell % grid.columns));
    const down = Math.floor(cell / grid.columns);
    const mm = Math.min(away, down, grid.rows - 1 - down) * cellMm;
    if (mm < borderMm) border.push(grid.printed[cell]!);
    else if (mm >= innerMm) {
      inner.push(grid.printed[cell]!);
      doubts.push(grid.deviation[cell]!);
    }
  }
  const doubt = Math.max(0.004, doubts.length > 0 ? median(doubts) : 0.02);
  const level = inner.length >= fewestCells ? median(inner) : Number.NaN;
  const mean = border.reduce((sum, value) => sum + value, 0) / border.length;
  return {
    borderGrey: border.length >= fewestCells ? reading(mean - level, 0.7 * doubt) : null,
    bareGrey: reading(level, doubt),
    bareShapes:
      inner.length >= 2 * fewestCells
        ? reading(
            quantile(inner, 0.95) - level - 1.645 * Math.min(0.02, medianAbsoluteDeviation(inner)),
            0.5 * doubt,
          )
        : null,
  };
}

/** 1 for bare cells with no mark within so many cells, 0 for the others; one value a cell, row by row. */
export function clearOfMarks(grid: EvidenceGrid, cells: number): Uint8Array {
  const { columns, rows } = grid;
  const marked = Uint8Array.from(grid.drawn, (drawn, cell) =>
    drawn > bareUpTo || grid.outline[cell] ? 1 : 0,
  );
  const near = new Uint8Array(marked.length);
  for (let cell = 0; cell < marked.length; cell++) {
    if (!marked[cell]) continue;
    const [x, y] = [cell % columns, Math.floor(cell / columns)];
    for (let row = Math.max(0, y - cells); row <= Math.min(rows - 1, y + cells); row++)
      near.fill(
        1,
        row * columns + Math.max(0, x - cells),
        row * columns + Math.min(columns - 1, x + cells) + 1,
      );
  }
  return near.map((value, cell) => (value || Number.isNaN(grid.printed[cell]! + grid.drawn[cell]!) ? 0 : 1));
}
