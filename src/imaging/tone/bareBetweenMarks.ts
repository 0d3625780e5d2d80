import { median } from '../../science/statistics/quantile.ts';
import type { ColourRaster } from '../raster.ts';
import type { CellGrid } from './cellGrid.ts';

/** In a normal distribution, what lies above mean + σ as a share of what lies above the mean. */
const upperShare = 0.3173;

/** Less bare ground than this between the marks, and its level can't be told from half-covered pixels: our rule. */
const leastBareShare = 0.15;

/** Half side of the window that is looked at, in cells: 6 mm at 2 mm cells. */
const windowCells = 3;

/**
 * The level of bare ground between marks, from the shape of the brightest mode: the level above which pixels thin out as
 * noise of the known size does. Unlike a percentile it doesn't depend on how much is drawn.
 * @param cells which cells are wanted.
 * @param noise standard deviation of log light from pixel to pixel on bare ground.
 * @returns log light by channel for those cells where enough ground shows; the others are missing.
 */
export function bareBetweenMarks(
  raster: ColourRaster,
  grid: CellGrid,
  cells: readonly number[],
  noise: number,
): ReadonlyMap<number, readonly [number, number, number]> {
  const found = new Map<number, readonly [number, number, number]>();
  const { cellPx, columns, rows } = grid;
  const side = (2 * windowCells + 1) * cellPx;
  const grey = new Float64Array(side * side);
  const at = new Int32Array(side * side);
  const [red, green, blue] = raster.planes;
  for (const cell of cells) {
    const column = cell % columns;
    const row = Math.floor(cell / columns);
    if (
      column < windowCells ||
      row < windowCells ||
      column >= columns - windowCells ||
      row >= rows - windowCells
    )
      continue;
    let count = 0;
    const top = (row - windowCells) * cellPx;
    const left = (column - windowCells) * cellPx;
    for (let y = top; y < top + side; y++) {
      for (let i = y * raster.widthPx + left, end = i + side; i < end; i++) {
        const value = red[i]! + green[i]! + blue[i]!;
        if (!(value > 0)) continue;
        grey[count] = Math.log(value / 3);
        at[count++] = i;
      }
    }
    if (count < side * side * 0.9) continue;
    const sorted = grey.slice(0, count).sort();
    const level = modeLevel(sorted, noise);
    const above = count - lowerBound(sorted, level);
    if (2 * above < leastBareShare * count) continue;
    let sumRed = 0;
    let sumGreen = 0;
    let sumBlue = 0;
    let sumGrey = 0;
    for (let k = 0; k < count; k++) {
      if (grey[k]! < level) continue;
      const i = at[k]!;
      sumRed += red[i]!;
      sumGreen += green[i]!;
      sumBlue += blue[i]!;
      sumGrey += (red[i]! + green[i]! + blue[i]!) / 3;
    }
    const shift = level - Math.log(sumGrey / above);
    found.set(cell, [
      Math.log(sumRed / above) + shift,
      Math.log(sumGreen / above) + shift,
      Math.log(sumBlue / above) + shift,
    ]);
  }
  return found;
}

/**
 * Standard deviation of log light from pixel to pixel over a window of wholly bare ground: noise, and the ground's own mottle
 * at that size. Median over such windows; over single cells where there are none.
 */
export function windowNoise(grid: CellGrid, bare: Uint8Array): number {
  const found: number[] = [];
  const step = windowCells * 2 + 1;
  for (let row = windowCells; row < grid.rows - windowCells; row += step) {
    for (let column = windowCells; column < grid.columns - windowCells; column += step) {
      const variance = windowVariance(grid, bare, column, row);
      if (variance !== null) found.push(variance);
    }
  }
  if (found.length >= 10) return Math.sqrt(median(found));
  return median([...bare.keys()].filter((cell) => bare[cell]).map((cell) => grid.spread[cell]!));
}

/** Variance over one window, within cells and between them; null unless nearly all of it is bare. */
function windowVariance(grid: CellGrid, bare: Uint8Array, column: number, row: number): number | null {
  let within = 0;
  let sum = 0;
  let squares = 0;
  let count = 0;
  for (let y = row - windowCells; y <= row + windowCells; y++) {
    for (let x = column - windowCells; x <= column + windowCells; x++) {
      const cell = y * grid.columns + x;
      if (!bare[cell]) continue;
      const level = grid.logLight[1][cell]!;
      within += grid.spread[cell]! ** 2;
      sum += level;
      squares += level * level;
      count++;
    }
  }
  if (count < 0.9 * (2 * windowCells + 1) ** 2) return null;
  return within / count + squares / count - (sum / count) ** 2;
}

/** Bisects for the level above which the share beyond one σ is that of a normal distribution's upper half. */
function modeLevel(sorted: Float64Array, noise: number): number {
  let low = sorted[Math.floor(sorted.length * 0.02)]!;
  let high = sorted[Math.floor(sorted.length * 0.995)]!;
  for (let halving = 0; halving < 30; halving++) {
    const middle = (low + high) / 2;
    const above = sorted.length - lowerBound(sorted, middle);
    const beyond = sorted.length - lowerBound(sorted, middle + noise);
    if (beyond / Math.max(1, above) > upperShare) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Index of the first value not below. */
function lowerBound(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
