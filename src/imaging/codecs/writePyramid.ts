import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Photograph } from '../photograph.ts';
import { openCodes } from './pictureLibrary.ts';

/** Side of a tile of the deep-zoom pyramid. */
export const tileSizePx = 512;
/** Widths of the previews, px; a narrower photograph is never enlarged. */
export const previewWidthsPx = [320, 640, 1280, 2048] as const;

/** The level of the deep-zoom pyramid that holds the photograph at full size. */
export function fullSizeLevel(widthPx: number, heightPx: number): number {
  return Math.ceil(Math.log2(Math.max(widthPx, heightPx)));
}

/** Display needs 8 bits; the upper byte of a 16-bit code is the same colour. */
function eightBit(codes: Uint8Array | Uint16Array): Uint8Array {
  return codes instanceof Uint8Array ? codes : Uint8Array.from(codes, (code) => code >> 8);
}

/**
 * Writes what a screen needs of a photograph: previews as `preview-WIDTH.jpg`, and a deep-zoom pyramid of JPEG
 * tiles without overlap as `tiles_files/LEVEL/COLUMN_ROW.jpeg`, level 0 being 1 px and each level twice the one below.
 * For looking only: nothing is measured on these.
 *
 * @param folder made where it is missing; throws the file system's error where it cannot be written
 */
export async function writePyramid(photograph: Photograph, folder: string): Promise<void> {
  const { widthPx, heightPx, channels } = photograph;
  const codes = eightBit(photograph.codes);
  await mkdir(folder, { recursive: true });
  await openCodes(codes, widthPx, heightPx, channels)
    .jpeg({ quality: 88 })
    .tile({ size: tileSizePx, overlap: 0, layout: 'dz', depth: 'onepixel', container: 'fs' })
    .toFile(join(folder, 'tiles.dz'));
  let from = { codes, widthPx, heightPx };
  for (const width of previewWidthsPx.toReversed()) {
    const scaled = await openCodes(from.codes, from.widthPx, from.heightPx, channels)
      .resize({ width, withoutEnlargement: true })
      .toColourspace(channels === 1 ? 'b-w' : 'srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    from = { codes: scaled.data, widthPx: scaled.info.width, heightPx: scaled.info.height };
    await openCodes(from.codes, from.widthPx, from.heightPx, channels)
      .jpeg({ quality: 85 })
      .toFile(join(folder, `preview-${width}.jpg`));
  }
}
