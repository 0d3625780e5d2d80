import { gaussianBlur } from '../operations/gaussianBlur.ts';
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
  const { frame } = side;
  const values = new Float32Array(side.darkness.length);
  const weights = new Float32Array(side.darkness.length);
  for (let i = 0; i < values.length; i++) {
    if (!side.counts[i] || Number.isNaN(side.darkness[i]!)) continue;
    values[i] = side.darkness[i]! / solidDarkness;
    weights[i] = 1;
  }
  const sigmaPx = sigmaMm * frame.pxPerMm;
  const sums = gaussianBlur(values, frame.widthPx, frame.heightPx, sigmaPx);
  const counts = gaussianBlur(weights, frame.widthPx, frame.heightPx, sigmaPx);
  const map = mapFrame(sizeMm);
  const data = new Float32Array(map.widthPx * map.heightPx).fill(Number.NaN);
  for (let y = 0; y < map.heightPx; y++) {
    for (let x = 0; x < map.widthPx; x++) {
      data[y * map.widthPx + x] = meanOfFour(sums, counts, frame, x, y);
    }
  }
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

/** Mean of the four fine pixels under one map pixel. */
function meanOfFour(sums: Float32Array, counts: Float32Array, frame: Frame, x: number, y: number): number {
  const step = frame.pxPerMm / mapPxPerMm;
  const left = Math.round(-frame.originMm[0] * frame.pxPerMm) + x * step;
  const top = Math.round(-frame.originMm[1] * frame.pxPerMm) + y * step;
  let sum = 0;
  let count = 0;
  for (let dy = 0; dy < step; dy++) {
    for (let dx = 0; dx < step; dx++) {
      const i = (top + dy) * frame.widthPx + left + dx;
      sum += sums[i]!;
      count += counts[i]!;
    }
  }
  return count / (step * step) >= leastWeight ? sum / count : Number.NaN;
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
      const misfit = errorMm ? registrationAt(errorMm, xMm, yMm) * (slope || 0) : 0;
      out[i] = Math.hypot((1 - Math.min(1, Math.max(0, c))) * error[cell]!, misfit, 0.003);
    }
  }
  return out;
}

function registrationAt(errorMm: Raster, xMm: number, yMm: number): number {
  const x = Math.min(
    errorMm.widthPx - 1,
    Math.max(0, Math.floor((xMm - errorMm.originMm[0]) * errorMm.pxPerMm)),
  );
  const y = Math.min(
    errorMm.heightPx - 1,
    Math.max(0, Math.floor((yMm - errorMm.originMm[1]) * errorMm.pxPerMm)),
  );
  return errorMm.data[y * errorMm.widthPx + x] || 0;
}
