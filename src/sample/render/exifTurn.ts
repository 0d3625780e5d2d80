import type { RenderedPicture } from './takePhotograph.ts';

export type ExifOrientation = 1 | 3 | 6 | 8;

/** The picture as a camera held sideways stores it: turned so that the orientation tag turns it upright again. */
export function storedTurned(picture: RenderedPicture, orientation: ExifOrientation): RenderedPicture {
  if (orientation === 1) return picture;
  const { widthPx, heightPx, codes } = picture;
  const sideways = orientation !== 3;
  const storedWidth = sideways ? heightPx : widthPx;
  const storedHeight = sideways ? widthPx : heightPx;
  const stored = codes.slice();
  for (let y = 0; y < storedHeight; y++)
    for (let x = 0; x < storedWidth; x++) {
      // Tag 6: shown turned a quarter clockwise; 8: counter-clockwise; 3: half a turn (TIFF 6.0, tag 274).
      const [fromX, fromY] =
        orientation === 3
          ? [widthPx - 1 - x, heightPx - 1 - y]
          : orientation === 6
            ? [widthPx - 1 - y, x]
            : [y, heightPx - 1 - x];
      const from = (fromY * widthPx + fromX) * 3;
      const to = (y * storedWidth + x) * 3;
      for (let c = 0; c < 3; c++) stored[to + c] = codes[from + c]!;
    }
  return { ...picture, widthPx: storedWidth, heightPx: storedHeight, codes: stored };
}

/** Puts an EXIF header with nothing but an orientation tag into a JPEG, right after its start marker. */
export function withOrientationTag(jpeg: Uint8Array, orientation: ExifOrientation): Uint8Array {
  const exif = [
    ...[0xff, 0xe1, 0x00, 0x22],
    ...[0x45, 0x78, 0x69, 0x66, 0x00, 0x00],
    // Little-endian TIFF header, one entry: tag 274, SHORT, count 1.
    ...[0x49, 0x49, 0x2a, 0x00, 0x08, 0x00, 0x00, 0x00, 0x01, 0x00],
    ...[0x12, 0x01, 0x03, 0x00, 0x01, 0x00, 0x00, 0x00, orientation, 0x00, 0x00, 0x00],
    ...[0x00, 0x00, 0x00, 0x00],
  ];
  const result = new Uint8Array(jpeg.length + exif.length);
  result.set(jpeg.subarray(0, 2));
  result.set(exif, 2);
  result.set(jpeg.subarray(2), 2 + exif.length);
  return result;
}
