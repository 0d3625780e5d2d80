import { leastSquares } from '../../science/statistics/leastSquares.ts';
import { median } from '../../science/statistics/quantile.ts';
import type { CellGrid } from './cellGrid.ts';

/** A quadratic in log light over a cell grid: six coefficients by channel, in coordinates −1..1 over the grid. */
export interface LightSurface {
  readonly coefficients: readonly (readonly number[])[];
}

/** Regressors of a cell: 1, x, y, x², xy, y² with x and y from −1 to 1 over the grid. */
export function surfaceTerms(grid: CellGrid, cell: number): number[] {
  const x = ((cell % grid.columns) / Math.max(1, grid.columns - 1)) * 2 - 1;
  const y = (Math.floor(cell / grid.columns) / Math.max(1, grid.rows - 1)) * 2 - 1;
  return [1, x, y, x * x, x * y, y * y];
}

/** Natural logarithm of the linear light of the surface in a cell, one channel. @param terms of that cell, by `surfaceTerms`. */
export function surfaceAt(surface: LightSurface, channel: number, terms: readonly number[]): number {
  const own = surface.coefficients[channel]!;
  return terms.reduce((sum, term, i) => sum + term * own[i]!, 0);
}

/** At most so many cells take part in a fit: more would not change six coefficients. */
const mostCells = 4000;

/**
 * Fits a quadratic to the log light of chosen cells, channel by channel.
 * @returns null where too few cells, or cells all along one line, leave it undetermined; then a constant level, if there are any.
 */
export function fitSurface(grid: CellGrid, cells: readonly number[]): LightSurface | null {
  if (cells.length === 0) return null;
  const step = Math.max(1, Math.floor(cells.length / mostCells));
  const chosen = cells.filter((_, i) => i % step === 0);
  const terms = chosen.map((cell) => surfaceTerms(grid, cell));
  const coefficients = grid.logLight.map((plane) => {
    const targets = chosen.map((cell) => plane[cell]!);
    const fitted = chosen.length >= 24 ? leastSquares(terms, targets, null) : null;
    return fitted ?? [median(targets), 0, 0, 0, 0, 0];
  });
  return { coefficients };
}

/** The same in every cell of a grid, row by row. */
export function surfacePlane(grid: CellGrid, surface: LightSurface, channel: number): Float32Array {
  const [a, b, c, d, e, f] = surface.coefficients[channel] as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const out = new Float32Array(grid.columns * grid.rows);
  for (let row = 0, cell = 0; row < grid.rows; row++) {
    const y = (row / Math.max(1, grid.rows - 1)) * 2 - 1;
    for (let column = 0; column < grid.columns; column++, cell++) {
      const x = (column / Math.max(1, grid.columns - 1)) * 2 - 1;
      out[cell] = a + b * x + c * y + d * x * x + e * x * y + f * y * y;
    }
  }
  return out;
}

/** Log light minus the surface, by channel and cell; NaN where the cell has no light. */
export function residualPlanes(grid: CellGrid, surface: LightSurface): Float32Array[] {
  return grid.logLight.map((plane, channel) => {
    const smooth = surfacePlane(grid, surface, channel);
    return plane.map((light, cell) => light - smooth[cell]!);
  });
}

/** Mean over channels of log light minus the surface, by cell; NaN where the cell has no light. */
export function residualOf(grid: CellGrid, surface: LightSurface): Float32Array {
  const [red, green, blue] = residualPlanes(grid, surface) as [Float32Array, Float32Array, Float32Array];
  return red.map((value, cell) => (value + green[cell]! + blue[cell]!) / 3);
}
