import { openPicture } from './pictureLibrary.ts';

/** Draws an SVG as a PNG of a width in px, on white. For files that hold no drawings. */
export async function drawnPng(svg: string, widthPx: number): Promise<Uint8Array> {
  const drawn = openPicture(new TextEncoder().encode(svg))
    .resize({ width: widthPx })
    .flatten({ background: '#ffffff' });
  return new Uint8Array(await drawn.png().toBuffer());
}
