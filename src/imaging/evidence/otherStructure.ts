import type { FeatureReading } from '../../records/suspects.ts';
import { medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import type { EvidenceGrid } from './evidenceGrid.ts';
import { mean } from './means.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const blockCells = 4;
const fewestBlocks = 16;
const leastToneTold = 0.14;

/**
 * How unevenly the print is left after tone, slope, lines of travel, bands and patches were taken out: the standard deviation of means over
 * 8 mm, as a share of the tone. What none of the other features describes shows here.
 */
export function otherStructure(
  { grid, left, expected }: PulledTone,
  patched: Uint8Array,
): FeatureReading | null {
  const rest = withoutLines(grid, left);
  const values: number[] = [];
  for (let top = 0; top + blockCells <= grid.rows; top += blockCells)
    for (let start = 0; start + blockCells <= grid.columns; start += blockCells) {
      const own: number[] = [];
      for (let k = 0; k < blockCells * blockCells; k++) {
        const cell = (top + Math.floor(k / blockCells)) * grid.columns + start + (k % blockCells);
        if (!(expected.cells[cell]! >= leastToneTold) || patched[cell] || Number.isNaN(rest[cell]!)) continue;
        own.push(rest[cell]!);
      }
      if (own.length >= 8) values.push(mean(own));
    }
  if (values.length < fewestBlocks) return null;
  const middle = mean(values);
  const spread = Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
  return reading(
    spread,
    Math.max(0.006, (0.5 * medianAbsoluteDeviation(values)) / Math.sqrt(values.length / 4)),
  );
}

/** Means of whole columns and rows taken out, so that streaks and bands don't count again. */
function withoutLines({ columns, rows }: EvidenceGrid, left: Float32Array): Float32Array {
  const rest = Float32Array.from(left);
  const take = (count: number, length: number, at: (line: number, k: number) => number) => {
    for (let line = 0; line < count; line++) {
      let [sum, seen] = [0, 0];
      for (let k = 0; k < length; k++) {
        const value = rest[at(line, k)]!;
        if (Number.isNaN(value)) continue;
        sum += value;
        seen++;
      }
      if (seen >= 12) for (let k = 0; k < length; k++) rest[at(line, k)]! -= sum / seen;
    }
  };
  take(columns, rows, (column, row) => row * columns + column);
  take(rows, columns, (row, column) => row * columns + column);
  return rest;
}
