import type { Point } from '../../../science/geometry/point.ts';
import { type CameraFrame, type FrameBox, wholeFrame } from './cameraFrame.ts';
import { exposureOf } from './exposure.ts';
import { boxInFrame, guideBox } from './guideBox.ts';
import { fineShareOf, fineStructure, laplacianVariance } from './sharpness.ts';
import type { StillReading } from './stillFindings.ts';

/** Longer side in px at which light is read. */
const lightPx = 1000;
/** Sharpness is read at full size in so many parts each way, of so many px. */
const parts = 3;
const partPx = 512;

/**
 * Reads light and sharpness of a photograph in the browser.
 * @param sizeMm width and height of what it shows, for the frame in which it is looked at; null: not known
 * @returns null where the browser can't open it (HEIC and TIFF, mostly)
 */
export async function lookAtStill(file: Blob, sizeMm: Point | null): Promise<StillReading | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (picture === null) return null;
  try {
    const { width: widthPx, height: heightPx } = picture;
    const scale = Math.min(1, lightPx / Math.max(widthPx, heightPx));
    const guide = guideBox([widthPx, heightPx], sizeMm);
    const whole = wholeFrame({ widthPx, heightPx });
    const small = frameOf(picture, whole, Math.round(widthPx * scale), Math.round(heightPx * scale));
    const tiles = tilesIn(boxInFrame(guide, { widthPx, heightPx })).map((tile) =>
      frameOf(picture, tile, tile.right - tile.left, tile.bottom - tile.top),
    );
    const variances = tiles.map((tile) => laplacianVariance(tile, wholeFrame(tile)));
    return {
      widthPx,
      heightPx,
      exposure: exposureOf(small, boxInFrame(guide, small)),
      fineShare: fineShareOf(tiles.map(fineStructure)),
      variance: variances.reduce((sum, each) => sum + each, 0) / variances.length,
    };
  } finally {
    picture.close();
  }
}

function tilesIn({ left, top, right, bottom }: FrameBox): readonly FrameBox[] {
  const [width, height] = [Math.min(partPx, right - left), Math.min(partPx, bottom - top)];
  return Array.from({ length: parts * parts }, (_, i) => {
    const x = left + Math.round(((right - left - width) * (i % parts)) / (parts - 1));
    const y = top + Math.round(((bottom - top - height) * Math.floor(i / parts)) / (parts - 1));
    return { left: x, top: y, right: x + width, bottom: y + height };
  });
}

function frameOf(picture: ImageBitmap, part: FrameBox, widthPx: number, heightPx: number): CameraFrame {
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const brush = canvas.getContext('2d', { willReadFrequently: true })!;
  const { left, top, right, bottom } = part;
  brush.drawImage(picture, left, top, right - left, bottom - top, 0, 0, widthPx, heightPx);
  return { widthPx, heightPx, rgba: brush.getImageData(0, 0, widthPx, heightPx).data };
}
