import type { Frame } from '../raster.ts';
import { createSpectrum, type Spectrum } from './spectrum.ts';
import { threeQuarterMagnitude } from './whitening.ts';

/** Agreement of one tile of the stone with the print at every shift within a radius, over the noise of the surface. */
export interface ShiftSurface {
  /** Centre of the tile in frame px. */
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** (2 radius + 1)² values, row by row: `values[(dy + radius) * span + dx + radius]`, in standard deviations. */
  readonly values: Float32Array;
  /** The highest value within `slack` px of each shift. */
  readonly spread: Float32Array;
}

/** Wide search tiles: the stone's is tapered inside a print's region twice as wide, so every shift is seen in full. */
export interface SurfaceSearch {
  readonly size: number;
  readonly radius: number;
  readonly slack: number;
  readonly tiles: readonly { readonly x: number; readonly y: number; readonly stone: Float64Array }[];
  readonly spectrum: Spectrum;
  readonly lowPass: Float64Array;
}

const largestMissing = 0.5;

function loadTile(
  raster: Float32Array,
  frame: Frame,
  centreX: number,
  centreY: number,
  taper: Float64Array,
  grid: Float64Array,
  part: 0 | 1,
): number {
  const size = taper.length;
  const left = Math.round(centreX - size / 2);
  const top = Math.round(centreY - size / 2);
  let sum = 0;
  let weight = 0;
  let missing = 0;
  const valueAt = (x: number, y: number): number =>
    x < 0 || y < 0 || x >= frame.widthPx || y >= frame.heightPx ? Number.NaN : raster[y * frame.widthPx + x]!;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const w = taper[x]! * taper[y]!;
      if (w === 0) continue;
      const value = valueAt(left + x, top + y);
      if (Number.isNaN(value)) missing += w;
      else {
        sum += w * value;
        weight += w;
      }
    }
  }
  const mean = weight > 0 ? sum / weight : 0;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const w = taper[x]! * taper[y]!;
      const value = w === 0 ? Number.NaN : valueAt(left + x, top + y);
      grid[2 * (y * size + x) + part] = !Number.isNaN(value) ? w * (value - mean) : 0;
    }
  }
  return missing / (missing + weight);
}

/** A taper that is flat in the middle and rises and falls over `rampPx`, of total width `widthPx`, centred in `size`. */
function taperOf(size: number, widthPx: number, rampPx: number): Float64Array {
  const start = (size - widthPx) / 2;
  return Float64Array.from({ length: size }, (_, i) => {
    const inside = Math.min(i + 0.5 - start, size - start - i - 0.5);
    if (inside <= 0) return 0;
    return inside >= rampPx ? 1 : 0.5 - 0.5 * Math.cos((Math.PI * inside) / rampPx);
  });
}

/**
 * Prepares the stone's tiles.
 * @param size side of the print's regions, px, a power of two; the stone's tiles are half as wide, Hann-tapered
 * @param margin px between the frame's edge and the work rectangle: tiles keep inside the rectangle
 */
export function prepareSearch(
  stone: Float32Array,
  frame: Frame,
  size: number,
  radius: number,
  slack: number,
  spacing: number,
  margin: number,
  blurPx: number,
): SurfaceSearch {
  const spectrum = createSpectrum(size);
  const taper = taperOf(size, size * 0.56, size * 0.28);
  const tiles: { x: number; y: number; stone: Float64Array }[] = [];
  const along = (length: number): number[] => {
    const usable = length - 2 * margin;
    const edge = Math.min(size * 0.22, usable / 2);
    const steps = Math.max(1, Math.round((usable - 2 * edge) / spacing));
    return Array.from({ length: steps + 1 }, (_, i) => margin + edge + ((usable - 2 * edge) * i) / steps);
  };
  for (const y of along(frame.heightPx)) {
    for (const x of along(frame.widthPx)) {
      const grid = new Float64Array(2 * size * size);
      if (loadTile(stone, frame, x, y, taper, grid, 0) > largestMissing) continue;
      spectrum.forward(grid);
      tiles.push({ x: Math.round(x), y: Math.round(y), stone: grid });
    }
  }
  const lowPass = Float64Array.from({ length: size }, (_, k) => {
    const f = Math.min(k, size - k) / size;
    return Math.exp(-0.5 * (2 * Math.PI * f * blurPx) ** 2);
  });
  return { size, radius, slack, tiles, spectrum, lowPass };
}

/** Highest value within `slack` of each place, along rows then columns. */
function spreadOut(values: Float32Array, span: number, slack: number): Float32Array {
  const once = new Float32Array(values.length);
  const out = new Float32Array(values.length);
  for (let y = 0; y < span; y++) {
    for (let x = 0; x < span; x++) {
      let best = Number.NEGATIVE_INFINITY;
      for (let k = Math.max(0, x - slack); k <= Math.min(span - 1, x + slack); k++)
        best = Math.max(best, values[y * span + k]!);
      once[y * span + x] = best;
    }
  }
  for (let y = 0; y < span; y++) {
    const from = Math.max(0, y - slack);
    const to = Math.min(span - 1, y + slack);
    for (let x = 0; x < span; x++) {
      let best = Number.NEGATIVE_INFINITY;
      for (let k = from; k <= to; k++) best = Math.max(best, once[k * span + x]!);
      out[y * span + x] = best;
    }
  }
  return out;
}

/** Correlates every stone tile with the print sampled in the same frame; tiles mostly off the print are left out. */
export function shiftSurfaces(search: SurfaceSearch, print: Float32Array, frame: Frame): ShiftSurface[] {
  const { size, radius, spectrum, lowPass } = search;
  const taper = taperOf(size, size, size * 0.15);
  const grid = new Float64Array(2 * size * size);
  const span = 2 * radius + 1;
  const mask = size - 1;
  const surfaces: ShiftSurface[] = [];
  for (const tile of search.tiles) {
    grid.fill(0);
    if (loadTile(print, frame, tile.x, tile.y, taper, grid, 0) > largestMissing) continue;
    spectrum.forward(grid);
    let energy = 0;
    for (let kx = 0, at = 0; kx < size; kx++) {
      for (let ky = 0; ky < size; ky++, at += 2) {
        const ar = tile.stone[at]!;
        const ai = tile.stone[at + 1]!;
        const br = grid[at]!;
        const bi = grid[at + 1]!;
        const real = ar * br + ai * bi;
        const imaginary = ar * bi - ai * br;
        const power = real * real + imaginary * imaginary;
        const gain = power > 0 ? (lowPass[kx]! * lowPass[ky]!) / threeQuarterMagnitude(power) : 0;
        grid[at] = real * gain;
        grid[at + 1] = imaginary * gain;
        energy += power * gain * gain;
      }
    }
    spectrum.inverse(grid);
    const unit = (size * size) / Math.sqrt(energy || 1);
    const values = new Float32Array(span * span);
    for (let dy = -radius, i = 0; dy <= radius; dy++) {
      for (let dx = -radius; dx <= radius; dx++, i++) {
        values[i] = grid[2 * ((dy & mask) * size + (dx & mask))]! * unit;
      }
    }
    surfaces.push({ x: tile.x, y: tile.y, radius, values, spread: spreadOut(values, span, search.slack) });
  }
  return surfaces;
}
