import { readFileSync } from 'node:fs';
import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import type { Photograph } from '../../src/imaging/photograph.ts';
import type { Point } from '../../src/science/geometry/point.ts';

/** A picture of `data/`, decoded. */
export async function publishedPhotograph(name: string): Promise<Photograph> {
  const decoded = await decodePhotograph(readFileSync(new URL(`data/${name}`, import.meta.url)), name);
  if (!decoded.ok) throw new Error(`${name}: ${decoded.error.code}`);
  return decoded.value;
}

/** The photograph as in a looking-glass: left is right. */
export function mirroredPhotograph(photo: Photograph): Photograph {
  const { widthPx, heightPx, channels } = photo;
  const codes = photo.codes.slice();
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const to = (y * widthPx + x) * channels;
      const from = (y * widthPx + widthPx - 1 - x) * channels;
      for (let channel = 0; channel < channels; channel++) codes[to + channel] = photo.codes[from + channel]!;
    }
  }
  return { ...photo, codes };
}

/** Where a place of a photograph comes to lie in its mirror image, px. */
export function mirroredPlace(photo: Photograph, [x, y]: Point): Point {
  return [photo.widthPx - x, y];
}
