/** A picture in memory as a canvas gives it: four bytes a pixel (red, green, blue, alpha), rows from the top. */
export interface CameraFrame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
}

/** A part of a frame, whole px; `right` and `bottom` are the first beyond it. */
export interface FrameBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The whole of a frame. */
export function wholeFrame({ widthPx, heightPx }: Pick<CameraFrame, 'widthPx' | 'heightPx'>): FrameBox {
  return { left: 0, top: 0, right: widthPx, bottom: heightPx };
}

/** Coded grey 0..255 of every pixel, by the luma weights of ITU-R BT.709 (from memory). */
export function greyOf({ widthPx, heightPx, rgba }: CameraFrame): Float32Array {
  const grey = new Float32Array(widthPx * heightPx);
  for (let i = 0, at = 0; i < grey.length; i++, at += 4)
    grey[i] = 0.2126 * rgba[at]! + 0.7152 * rgba[at + 1]! + 0.0722 * rgba[at + 2]!;
  return grey;
}
