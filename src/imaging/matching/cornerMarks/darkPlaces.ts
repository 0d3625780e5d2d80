import type { Point } from '../../../science/geometry/point.ts';
import { connectedPlaces } from '../../operations/connectedPlaces.ts';
import { blurWithin } from '../../operations/gaussianBlur.ts';
import type { Photograph } from '../../photograph.ts';
import { smallLevels } from '../smallLevels.ts';

/** A small dark thing on lighter ground. */
export interface DarkPlace {
  /** Centres of its grid cells, photograph px. */
  readonly pointsPx: readonly Point[];
  /** Side of a grid cell, photograph px. */
  readonly cellPx: number;
}

/** The photograph is looked at in about this many cells along its longer side: a stroke of half a millimetre stays one cell wide. */
const longSideCells = 1800;
/** How much darker than its surroundings a mark must be, in steps of `smallLevels`: a quarter of the light gone. */
const leastDarker = 11;
/** Extent of a mark along its longer side, in shares of the photograph's longer side. */
const extent = { least: 0.006, most: 0.09 };

/** Dark connected things of the size of a corner mark. */
export function darkPlaces(photo: Photograph): DarkPlace[] {
  const cellPx = Math.max(1, Math.round(Math.max(photo.widthPx, photo.heightPx) / longSideCells));
  const width = Math.floor(photo.widthPx / cellPx);
  const height = Math.floor(photo.heightPx / cellPx);
  const levels = Float32Array.from(smallLevels(photo, cellPx, width, height));
  const long = Math.max(width, height);
  const everywhere = new Float32Array(levels.length).fill(1);
  const around = blurWithin([levels], everywhere, width, height, 0.012 * long, 0.1).values[0]!;
  const dark = Uint8Array.from(levels, (level, i) => (around[i]! - level >= leastDarker ? 1 : 0));
  return connectedPlaces(dark, width, height).flatMap(({ pixels }) => {
    if (pixels.length < 12 || pixels.length > (extent.most * long) ** 2) return [];
    const columns = pixels.map((i) => i % width);
    const rows = pixels.map((i) => Math.floor(i / width));
    const side = Math.max(rangeOf(columns), rangeOf(rows));
    if (side < extent.least * long || side > extent.most * long) return [];
    const pointsPx = pixels.map((_, k): Point => [(columns[k]! + 0.5) * cellPx, (rows[k]! + 0.5) * cellPx]);
    return [{ pointsPx, cellPx }];
  });
}

function rangeOf(values: readonly number[]): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return high - low + 1;
}
