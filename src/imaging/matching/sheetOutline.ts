import type { Point } from '../../science/geometry/point.ts';
import { convexHull, signedArea } from '../../science/geometry/polygon.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import type { Photograph } from '../photograph.ts';
import { smallLevels } from './smallLevels.ts';

/** A bright object on a darker table, as the photograph shows it. */
export interface SheetOutline {
  /** Convex hull, photograph px. */
  readonly hullPx: readonly Point[];
  /** 0..1: how clearly object and table differ. */
  readonly sure: number;
}

/** The photograph is looked at in this many px along its longer side. */
const longSidePx = 500;

/**
 * Finds the sheet (or the stone) as the largest bright connected place, by the brightness that best separates two classes (Otsu 1979).
 * @returns null where nothing stands out, or what does fills the whole picture.
 */
export function sheetOutline(photo: Photograph): SheetOutline | null {
  const step = Math.max(1, Math.ceil(Math.max(photo.widthPx, photo.heightPx) / longSidePx));
  const width = Math.floor(photo.widthPx / step);
  const height = Math.floor(photo.heightPx / step);
  const levels = smallLevels(photo, step, width, height);
  const { threshold, separation } = bestThreshold(levels);
  const mask = Uint8Array.from(levels, (level) => (level >= threshold ? 1 : 0));
  const largest = connectedPlaces(opened(mask, width, height), width, height).reduce<readonly number[]>(
    (best, place) => (place.pixels.length > best.length ? place.pixels : best),
    [],
  );
  const share = largest.length / (width * height);
  if (share < 0.03) return null;
  const points = largest.map(
    (i): Point => [((i % width) + 0.5) * step, (Math.floor(i / width) + 0.5) * step],
  );
  const hullPx = grownHull(convexHull(points), step / 2);
  const filled = (filledArea(largest, width, height) * step * step) / Math.abs(signedArea(hullPx));
  return { hullPx, sure: share > 0.97 || filled < leastFilled ? 0 : separation };
}

/** A sheet fills its own hull, whatever is drawn on it; bright parts of a scene do not. */
const leastFilled = 0.85;

/** Pixels of a place and of the holes in it: all that can't be reached from the picture's border without crossing it. */
function filledArea(place: readonly number[], width: number, height: number): number {
  const outside = new Uint8Array(width * height).fill(1);
  for (const i of place) outside[i] = 0;
  const touchesBorder = (i: number) =>
    i < width || i >= width * (height - 1) || i % width === 0 || i % width === width - 1;
  const reached = connectedPlaces(outside, width, height)
    .filter(({ pixels }) => pixels.some(touchesBorder))
    .reduce((sum, { pixels }) => sum + pixels.length, 0);
  return width * height - reached;
}

/** Otsu's threshold (1979, doi 10.1109/TSMC.1979.4310076) and the share of variance between its classes. */
function bestThreshold(levels: Uint8Array): { threshold: number; separation: number } {
  const histogram = new Float64Array(256);
  for (const level of levels) histogram[level]!++;
  const total = levels.length;
  const mean = histogram.reduce((sum, count, level) => sum + count * level, 0) / total;
  const variance = histogram.reduce((sum, count, level) => sum + count * (level - mean) ** 2, 0) / total;
  let best = { threshold: 128, between: -1 };
  let below = 0;
  let sumBelow = 0;
  for (let level = 1; level < 256; level++) {
    below += histogram[level - 1]!;
    sumBelow += histogram[level - 1]! * (level - 1);
    if (below === 0 || below === total) continue;
    const share = below / total;
    const between =
      share * (1 - share) * (sumBelow / below - (mean * total - sumBelow) / (total - below)) ** 2;
    if (between > best.between) best = { threshold: level, between };
  }
  return { threshold: best.threshold, separation: variance > 0 ? best.between / variance : 0 };
}

/** Takes off single pixels and thin bridges: eroded once, then grown back within the mask. */
function opened(mask: Uint8Array, width: number, height: number): Uint8Array {
  const eroded = new Uint8Array(mask.length);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      eroded[i] = mask[i]! & mask[i - 1]! & mask[i + 1]! & mask[i - width]! & mask[i + width]!;
    }
  }
  const out = new Uint8Array(mask.length);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      out[i] =
        mask[i]! & (eroded[i]! | eroded[i - 1]! | eroded[i + 1]! | eroded[i - width]! | eroded[i + width]!);
    }
  }
  return out;
}

/** Box centres lie half a box inside the true edge. */
function grownHull(hull: readonly Point[], byPx: number): Point[] {
  const cx = hull.reduce((sum, point) => sum + point[0], 0) / hull.length;
  const cy = hull.reduce((sum, point) => sum + point[1], 0) / hull.length;
  return hull.map(([x, y]): Point => {
    const length = Math.hypot(x - cx, y - cy) || 1;
    return [x + ((x - cx) / length) * byPx, y + ((y - cy) / length) * byPx];
  });
}
