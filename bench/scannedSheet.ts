import { readFile } from 'node:fs/promises';
import { decodePhotograph } from '../src/imaging/codecs/decodePhotograph.ts';
import type { Drawing } from '../src/sample/render/drawing.ts';
import { scannedDrawing } from '../src/sample/render/layouts/scannedDrawing.ts';
import type { Point } from '../src/science/geometry/point.ts';

/** A drawing from one of the scans beside this file. */
export async function scannedSheet(file: string, sizeMm: Point, seed: number): Promise<Drawing> {
  const bytes = await readFile(new URL(`data/scans/${file}`, import.meta.url));
  const decoded = await decodePhotograph(bytes, file);
  if (!decoded.ok) throw new Error(decoded.error.message);
  const { widthPx, heightPx, channels, codes, toLinear } = decoded.value;
  const light = Float32Array.from({ length: widthPx * heightPx }, (_, i) => toLinear[codes[i * channels]!]!);
  return scannedDrawing(file, { widthPx, heightPx, light }, sizeMm, seed);
}
