import { gaussianBlur } from '../operations/gaussianBlur.ts';
import { nearestValue } from '../operations/nearestValue.ts';
import type { Frame, Raster } from '../raster.ts';
import type { SideTone } from '../tone/readSide.ts';

/** The maps' resolution: twice the smoothing's. */
export const mapPxPerMm = 2;

/** Smoothed coverage of one object over exactly the work rectangle, and how sure it is. */
export interface CoverageMap extends Raster {
  /** Standard deviation of the smoothed coverage; NaN where there is nothing. */
  readonly deviation: Float32Array;
}

/** Less than this of the smoothing's weight on the sheet, and a place says nothing. */
const leastWeight = 0.6;

/**
 * Coverage smoothed by a Gaussian, on the map's grid.
 * @param sigmaMm standard deviation of the smoothing.
 * @param errorMm local standard deviation of the registration; null for the stone, which defines the frame.
 */
export function coverageMap(
  side: SideTone,
  solidDarkness: number,
  sizeMm: readonly [number, number],
  sigmaMm: number,
  errorMm: Raster | null,
): CoverageMap {
  const map = mapFrame(sizeMm);
  const { values, weights } = pooled(side, solidDarkness, map);
  // Pooling is a blur of its own, a box of one map px: what is left to do is a little less than the whole.
  const sigmaPx = Math.sqrt(Math.max(0, (sigmaMm * mapPxPerMm) ** 2 - 1 / 12));
  const data = gaussianBlur(values, map.widthPx, map.heightPx, sigmaPx);
  const counts = gaussianBlur(weights, map.widthPx, map.heightPx, sigmaPx);
  const least = leastWeightAcross(map, sigmaPx);
  for (let i = 0; i < data.length; i++)
    data[i] = counts[i]! >= least[i]! ? data[i]! / counts[i]! : Number.NaN;
  return { ...map, data, deviation: deviationOf(data, map, side, errorMm) };
}

/** The work rectangle at the map's resolution. */
export function mapFrame([widthMm, heightMm]: readonly [number, number]): Frame {
  return {
    widthPx: Math.round(widthMm * mapPxPerMm),
    heightPx: Math.round(heightMm * mapPxPerMm),
    pxPerMm: mapPxPerMm,
    originMm: [0, 0],
  };
}

/** Coverage and counted share of the fine pixels under each map pixel. */
function pooled(
  side: SideTone,
  solidDarkness: number,
  map: Frame,
): { values: Float32Array; weights: Float32Array } {
  const { frame, darkness, counts } = side;
  const step = frame.pxPerMm / mapPxPerMm;
  const left = Math.round(-frame.originMm[0] * frame.pxPerMm);
  const top = Math.round(-frame.originMm[1] * frame.pxPerMm);
  const values = new Float32Array(map.widthPx * map.heightPx);
  const weights = new Float32Array(values.length);
  const share = 1 / (step * step);
  for (let y = 0; y < map.heightPx * step; y++) {
    const row = Math.floor(y / step) * map.widthPx;
    const from = (top + y) * frame.widthPx + left;
    for (let x = 0; x < map.widthPx * step; x++) {
      const value = darkness[from + x]!;
      if (!counts[from + x] || Number.isNaN(value)) continue;
      const at = row + Math.floor(x / step);
      values[at]! += (value / solidDarkness) * share;
      weights[at]! += share;
    }
  }
  return { values, weights };
}

/** At the rectangle's own edge up to three quarters of the kernel lie outside: that is no missing sheet. */
function leastWeightAcross({ widthPx, heightPx }: Frame, sigmaPx: number): Float32Array {
  const along = (length: number) =>
    Float32Array.from({ length }, (_, at) => (Math.min(at, length - 1 - at) < sigmaPx ? 0.6 : 1));
  const [columns, rows] = [along(widthPx), along(heightPx)];
  const least = new Float32Array(widthPx * heightPx);
  for (let y = 0, i = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, i++) least[i] = leastWeight * columns[x]! * rows[y]!;
  }
  return least;
}

/** Ground (fading as coverage rises), misregistration times gradient, and a floor for noise. */
function deviationOf(data: Float32Array, map: Frame, side: SideTone, errorMm: Raster | null): Float32Array {
  const { grid, error } = side.ground;
  const out = new Float32Array(data.length).fill(Number.NaN);
  const cellMm = grid.cellPx / side.frame.pxPerMm;
  for (let y = 1; y < map.heightPx - 1; y++) {
    for (let x = 1; x < map.widthPx - 1; x++) {
      const i = y * map.widthPx + x;
      const c = data[i]!;
      if (Number.isNaN(c)) continue;
      const xMm = (x + 0.5) / map.pxPerMm;
      const yMm = (y + 0.5) / map.pxPerMm;
      const cell =
        Math.floor((yMm - side.frame.originMm[1]) / cellMm) * grid.columns +
        Math.floor((xMm - side.frame.originMm[0]) / cellMm);
      const slope =
        Math.hypot(data[i + 1]! - data[i - 1]!, data[i + map.widthPx]! - data[i - map.widthPx]!) *
        0.5 *
        map.pxPerMm;
      const misfit = errorMm ? nearestValue(errorMm, xMm, yMm) * (slope || 0) : 0;
      out[i] = Math.hypot((1 - Math.min(1, Math.max(0, c))) * error[cell]!, misfit, 0.003);
    }
  }
  return out;
}
