import { encodePng } from '../../imaging/codecs/encodePicture.ts';
import type { Mask } from '../../imaging/raster.ts';

/** Where the sheet lay on the work rectangle, as an 8-bit grey PNG in stone orientation: 255 on the sheet, 0 off it. */
export function sheetMask({ widthPx, heightPx, data }: Mask): Promise<Uint8Array> {
  return encodePng({ widthPx, heightPx, channels: 1, codes: data });
}
