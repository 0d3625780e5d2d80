import { blurWithin } from '../operations/gaussianBlur.ts';
import type { ColourRaster } from '../raster.ts';
import type { BareCells } from './bareCells.ts';
import type { CellGrid } from './cellGrid.ts';
import { surfacePlane } from './lightSurface.ts';

/** The bare ground's light everywhere, on a cell grid: what each place would show without a mark. */
export interface GroundField {
  readonly grid: CellGrid;
  /** Natural log of linear light, by channel. */
  readonly logGround: readonly [Float32Array, Float32Array, Float32Array];
  /** Standard deviation of the ground, relative, by cell; grows away from bare places. */
  readonly error: Float32Array;
}

/** Log light of bare ground between marks, by channel, for cells that aren't bare as a whole. */
export type BetweenMarks = ReadonlyMap<number, readonly [number, number, number]>;

/** What a level between marks counts beside a bare cell. */
const betweenWeight = 1;

/** Scales in cells at which the ground departs from a smooth surface, coarse to fine, and how many cells' worth of doubt pulls each to zero. */
const scales = [
  { sigmaCells: 32, doubt: 0.0003 },
  { sigmaCells: 12, doubt: 0.002 },
  { sigmaCells: 4, doubt: 0.008 },
] as const;

/**
 * Carries the ground from bare cells to all: the smooth surface plus what the bare cells near by depart from it, from coarse
 * to fine; away from bare cells the finer scales fade out. The departures that fade give the error.
 */
export function groundField(grid: CellGrid, found: BareCells, between: BetweenMarks): GroundField {
  const { columns, rows } = grid;
  const count = columns * rows;
  const weights = Float32Array.from(found.bare);
  for (const cell of between.keys()) if (!found.bare[cell]) weights[cell] = betweenWeight;
  const logGround = [0, 1, 2].map((channel) => surfacePlane(grid, found.surface, channel));
  const residuals = logGround.map((ground, channel) => {
    const seen = Float32Array.from(grid.logLight[channel]!, (light, cell) =>
      found.bare[cell] ? light : Number.NaN,
    );
    for (const [cell, level] of between) if (!found.bare[cell]) seen[cell] = level[channel]!;
    return seen.map((light, cell) => (weights[cell]! > 0 ? light - ground[cell]! : 0));
  });
  const variance = new Float32Array(count);
  for (const { sigmaCells, doubt } of scales) {
    const blurred = blurWithin(residuals, weights, columns, rows, sigmaCells, 1e-6);
    const before = meanSquare(residuals[1]!, weights);
    for (let cell = 0; cell < count; cell++) {
      const trust = blurred.weights[cell]! / (blurred.weights[cell]! + doubt);
      for (let channel = 0; channel < 3; channel++) {
        const near = blurred.values[channel]![cell]!;
        const step = Number.isNaN(near) ? 0 : trust * near;
        logGround[channel]![cell]! += step;
        if (weights[cell]! > 0) residuals[channel]![cell]! -= step;
      }
      variance[cell]! += before * (1 - trust) ** 2;
    }
  }
  const rest = meanSquare(residuals[1]!, weights) / 4;
  return {
    grid,
    logGround: [logGround[0]!, logGround[1]!, logGround[2]!],
    error: variance.map((own) => Math.sqrt(own + rest)),
  };
}

/** Mean square over the cells that count. */
function meanSquare(values: Float32Array, weights: Float32Array): number {
  let squares = 0;
  let count = 0;
  for (let cell = 0; cell < values.length; cell++) {
    if (weights[cell] === 0) continue;
    squares += values[cell]! ** 2;
    count++;
  }
  return squares / Math.max(1, count);
}

/**
 * Darkness `1 − R / R_ground` in linear light: each channel by its own ground at that place, then averaged.
 * @returns a plane of the raster's size; NaN where the raster has nothing. Below 0 where a place is brighter than its ground.
 */
export function darknessOf(raster: ColourRaster, ground: GroundField): Float32Array {
  const { widthPx, heightPx } = raster;
  const { columns, rows, cellPx } = ground.grid;
  const inverse = ground.logGround.map((plane) => plane.map((value) => Math.exp(-value)));
  const [red, green, blue] = raster.planes;
  const out = new Float32Array(widthPx * heightPx);
  const lefts = new Int32Array(widthPx);
  const shares = new Float32Array(widthPx);
  for (let x = 0; x < widthPx; x++) {
    const at = Math.min(Math.max((x + 0.5) / cellPx - 0.5, 0), columns - 1.001);
    lefts[x] = Math.floor(at);
    shares[x] = at - lefts[x]!;
  }
  for (let y = 0; y < heightPx; y++) {
    const at = Math.min(Math.max((y + 0.5) / cellPx - 0.5, 0), rows - 1.001);
    const top = Math.floor(at);
    const down = at - top;
    for (let x = 0, i = y * widthPx; x < widthPx; x++, i++) {
      const cell = top * columns + lefts[x]!;
      const across = shares[x]!;
      const w00 = (1 - across) * (1 - down);
      const w10 = across * (1 - down);
      const w01 = (1 - across) * down;
      const w11 = across * down;
      let sum = 0;
      for (let channel = 0; channel < 3; channel++) {
        const plane = inverse[channel]!;
        const scale =
          w00 * plane[cell]! +
          w10 * plane[cell + 1]! +
          w01 * plane[cell + columns]! +
          w11 * plane[cell + columns + 1]!;
        sum += (channel === 0 ? red[i]! : channel === 1 ? green[i]! : blue[i]!) * scale;
      }
      out[i] = 1 - sum / 3;
    }
  }
  return out;
}
