import type { ColourRaster } from '../raster.ts';

/** A raster summed up in square cells: mean light by channel, its unevenness, and how much of the cell counts. */
export interface CellGrid {
  readonly columns: number;
  readonly rows: number;
  readonly cellPx: number;
  /** Natural log of the mean linear light, by channel; NaN where too little counts. */
  readonly logLight: readonly [Float32Array, Float32Array, Float32Array];
  /** Standard deviation of the mean of the three channels, relative to it. */
  readonly spread: Float32Array;
}

/** A cell counts when at least this share of it does. */
const leastShare = 0.9;

/**
 * Sums a raster up in cells.
 * @param counts per pixel, whether it may be looked at at all; null: all.
 * @param cellPx side of a cell in raster px.
 */
export function cellGrid(raster: ColourRaster, counts: Uint8Array | null, cellPx: number): CellGrid {
  const columns = Math.floor(raster.widthPx / cellPx);
  const rows = Math.floor(raster.heightPx / cellPx);
  const planes = [0, 1, 2].map(() => new Float32Array(columns * rows).fill(Number.NaN));
  const spread = new Float32Array(columns * rows).fill(Number.NaN);
  const [red, green, blue] = raster.planes;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const sums = [0, 0, 0];
      let squares = 0;
      let count = 0;
      for (let y = row * cellPx; y < (row + 1) * cellPx; y++) {
        for (let i = y * raster.widthPx + column * cellPx, end = i + cellPx; i < end; i++) {
          if ((counts && counts[i] === 0) || Number.isNaN(red[i]!)) continue;
          sums[0]! += red[i]!;
          sums[1]! += green[i]!;
          sums[2]! += blue[i]!;
          const mean = (red[i]! + green[i]! + blue[i]!) / 3;
          squares += mean * mean;
          count++;
        }
      }
      if (count < leastShare * cellPx * cellPx) continue;
      const at = row * columns + column;
      for (const [channel, plane] of planes.entries())
        plane[at] = Math.log(Math.max(sums[channel]! / count, 1e-6));
      const mean = (sums[0]! + sums[1]! + sums[2]!) / 3 / count;
      spread[at] = Math.sqrt(Math.max(0, squares / count - mean * mean)) / Math.max(mean, 1e-6);
    }
  }
  return { columns, rows, cellPx, logLight: [planes[0]!, planes[1]!, planes[2]!], spread };
}
