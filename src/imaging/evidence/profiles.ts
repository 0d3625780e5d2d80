import { median } from '../../science/statistics/quantile.ts';
import type { EvidenceGrid } from './evidenceGrid.ts';

/** What is left by place, as one value per line of the grid; NaN where too few cells were read. */
export interface Profile {
  readonly values: Float64Array;
  /** Means of both halves, for waves. */
  readonly whole: Float64Array;
  /** Standard deviation of a line's value. */
  readonly deviation: number;
}

/** A half of a line needs so many cells, and this share of what other lines have. */
const fewestCells = 5;
const leastShare = 0.4;

/**
 * What runs the whole length of a column (a line of travel) or row: of the medians of its two halves, the one nearer to nothing, or
 * nothing where they disagree, so that a patch is no line. Slow changes are taken out.
 */
export function profile(
  grid: EvidenceGrid,
  left: Float32Array,
  lines: 'columns' | 'rows',
  slowCells: number,
): Profile {
  const halves = [halfProfile(grid, left, lines, 0), halfProfile(grid, left, lines, 1)].map((half) =>
    flattened(half, slowCells),
  );
  const values = halves[0]!.map((one, line) => {
    const other = halves[1]![line]!;
    if (Number.isNaN(one) || Number.isNaN(other)) return Number.NaN;
    return one * other <= 0 ? 0 : Math.sign(one) * Math.min(Math.abs(one), Math.abs(other));
  });
  const whole = halves[0]!.map((one, line) => (one + halves[1]![line]!) / 2);
  const sizes = halves.flatMap((half) => [...half].filter((value) => !Number.isNaN(value)).map(Math.abs));
  return { values, whole, deviation: sizes.length < 16 ? Infinity : Math.max(0.004, 1.4826 * median(sizes)) };
}

function halfProfile(
  grid: EvidenceGrid,
  left: Float32Array,
  lines: 'columns' | 'rows',
  half: 0 | 1,
): Float64Array {
  const count = lines === 'columns' ? grid.columns : grid.rows;
  const length = lines === 'columns' ? grid.rows : grid.columns;
  const [from, to] = half === 0 ? [0, Math.floor(length / 2)] : [Math.floor(length / 2), length];
  const own = Array.from({ length: count }, (_, line) => {
    const values: number[] = [];
    for (let k = from; k < to; k++) {
      const value = left[lines === 'columns' ? k * grid.columns + line : line * grid.columns + k]!;
      if (!Number.isNaN(value)) values.push(value);
    }
    return values;
  });
  const usual = median(own.map((values) => values.length).filter((size) => size > 0));
  const least = Math.max(fewestCells, leastShare * usual);
  return Float64Array.from(own, (values) => (values.length >= least ? median(values) : Number.NaN));
}

function flattened(raw: Float64Array, slowCells: number): Float64Array {
  return raw.map(
    (value, line) => value - median(raw.subarray(Math.max(0, line - slowCells), line + slowCells + 1)),
  );
}
