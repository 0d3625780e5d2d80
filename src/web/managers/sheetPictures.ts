import type { Point } from '../../science/geometry/point.ts';
import type { GroundedPicture } from './liftPainter.ts';

/** Loads a picture whole; rejects when it cannot be had. */
export async function loadPicture(address: string): Promise<HTMLImageElement> {
  const picture = new Image();
  picture.decoding = 'async';
  picture.src = address;
  await picture.decode();
  return picture;
}

/**
 * A picture on a canvas no larger than `longestPx`, with the colour of its bare rim: the median of the lighter half
 * of its outermost pixels, so that stone and sheet may reach a little beyond what was measured.
 */
export function grounded(picture: HTMLImageElement, longestPx: number): GroundedPicture {
  const canvas = drawn(picture, longestPx);
  return { picture: canvas, ground: rimColour(canvas), cut: null };
}

/**
 * A face of which only a part is sheet: picture and rim on one canvas, empty where `sheet` (its yes in the alpha
 * channel) says no. The rim goes on as the outermost pixels of `sheet` do.
 * @param rimShare the rim's width as a share of the picture's width and of its height
 */
export function cutToSheet(
  face: GroundedPicture,
  sheet: HTMLCanvasElement,
  rimShare: Point,
): GroundedPicture {
  const picture = face.picture as HTMLCanvasElement;
  const [rimX, rimY] = [Math.round(picture.width * rimShare[0]), Math.round(picture.height * rimShare[1])];
  const cut = document.createElement('canvas');
  cut.width = picture.width + 2 * rimX;
  cut.height = picture.height + 2 * rimY;
  const context = cut.getContext('2d')!;
  const spans = (rim: number, from: number, to: number) =>
    [
      [0, 1, 0, rim],
      [0, from, rim, to],
      [from - 1, 1, rim + to, rim],
    ] as const;
  for (const [sourceX, sourceWidth, x, width] of spans(rimX, sheet.width, picture.width))
    for (const [sourceY, sourceHeight, y, height] of spans(rimY, sheet.height, picture.height))
      context.drawImage(sheet, sourceX, sourceY, sourceWidth, sourceHeight, x, y, width, height);
  context.globalCompositeOperation = 'source-atop';
  context.fillStyle = face.ground;
  context.fillRect(0, 0, cut.width, cut.height);
  context.drawImage(picture, rimX, rimY);
  return { ...face, cut };
}

/** A grey mask as a canvas whose alpha is the grey, to cut hatching with. */
export function asAlpha(mask: HTMLImageElement, longestPx: number): HTMLCanvasElement {
  const canvas = drawn(mask, longestPx);
  const context = canvas.getContext('2d')!;
  const pixels = context.getImageData(0, 0, canvas.width, canvas.height);
  for (let at = 0; at < pixels.data.length; at += 4) pixels.data[at + 3] = pixels.data[at]!;
  context.putImageData(pixels, 0, 0);
  return canvas;
}

/** How much the masks mark in each of `columns` equally wide columns, left to right, in alpha of 0..255 summed. */
export function markedByColumn(masks: readonly HTMLCanvasElement[], columns: number): number[] {
  const small = document.createElement('canvas');
  small.width = columns;
  small.height = columns;
  const context = small.getContext('2d', { willReadFrequently: true })!;
  for (const mask of masks) context.drawImage(mask, 0, 0, columns, columns);
  const { data } = context.getImageData(0, 0, columns, columns);
  const marked = new Array<number>(columns).fill(0);
  for (let at = 0; at < columns * columns; at++) marked[at % columns]! += data[4 * at + 3]!;
  return marked;
}

function drawn(picture: HTMLImageElement, longestPx: number): HTMLCanvasElement {
  const scale = Math.min(1, longestPx / Math.max(picture.naturalWidth, picture.naturalHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.naturalWidth * scale));
  canvas.height = Math.max(1, Math.round(picture.naturalHeight * scale));
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

function rimColour(canvas: HTMLCanvasElement): string {
  const small = document.createElement('canvas');
  small.width = small.height = 48;
  const context = small.getContext('2d', { willReadFrequently: true })!;
  context.drawImage(canvas, 0, 0, 48, 48);
  const { data } = context.getImageData(0, 0, 48, 48);
  const rim: [number, number, number][] = [];
  for (let y = 0; y < 48; y++)
    for (let x = 0; x < 48; x++)
      if (x < 2 || y < 2 || x > 45 || y > 45) {
        const at = (y * 48 + x) * 4;
        rim.push([data[at]!, data[at + 1]!, data[at + 2]!]);
      }
  rim.sort((a, b) => a[0] + a[1] + a[2] - (b[0] + b[1] + b[2]));
  const [r, g, b] = rim[Math.floor(rim.length * 0.75)]!;
  return `rgb(${r}, ${g}, ${b})`;
}
