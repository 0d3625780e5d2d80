import type { FeatureReading } from '../../records/suspects.ts';
import { median, medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import type { NearestDark } from './besideDarks.ts';
import { cellsOf, type PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const blockCells = 4;
const fewestCells = 6;
const fewestBlocks = 10;
const fewestInRow = 10;
/** Lights may be lost and darks closed for reasons of their own. */
const tones = [0.25, 0.95] as const;
/** Strong etch creeps out of darks about so far. */
const besideMm = 10;

/**
 * How unevenly the print is left all over: the median absolute deviation of means over 8 mm, as a share of the tone, after tone, slope
 * and the medians of rows were taken out. A fault in one place, in a line or a band, on lights alone or beside darks leaves the middle of
 * the blocks as it is; only what covers half of the sheet shows. null where too few middles and darks are drawn.
 */
export function unevenAllOver(
  { grid, left, expected }: PulledTone,
  nearest: NearestDark,
): FeatureReading | null {
  const { columns, rows } = grid;
  const rest = left.map((value, cell) => {
    const { distance } = nearest(cell);
    const tone = expected.cells[cell]!;
    const beside = distance > 0 && distance < cellsOf(besideMm);
    return tone >= tones[0] && tone <= tones[1] && !beside ? value : Number.NaN;
  });
  for (let row = 0; row < rows; row++) {
    const line = rest.subarray(row * columns, (row + 1) * columns);
    const read = [...line].filter((value) => !Number.isNaN(value));
    if (read.length < fewestInRow) continue;
    const usual = median(read);
    for (let column = 0; column < columns; column++) line[column]! -= usual;
  }
  const means: number[] = [];
  for (let top = 0; top + blockCells <= rows; top += blockCells)
    for (let start = 0; start + blockCells <= columns; start += blockCells) {
      let [sum, count] = [0, 0];
      for (let k = 0; k < blockCells * blockCells; k++) {
        const value = rest[(top + Math.floor(k / blockCells)) * columns + start + (k % blockCells)]!;
        if (Number.isNaN(value)) continue;
        sum += value;
        count++;
      }
      if (count >= fewestCells) means.push(sum / count);
    }
  if (means.length < fewestBlocks) return null;
  const spread = medianAbsoluteDeviation(means);
  // The median absolute deviation of normal values is 37 % as efficient as their standard deviation (from memory).
  return reading(spread, Math.max(0.004, spread / Math.sqrt(2 * 0.37 * means.length)));
}
