import { encodeJpeg, encodePng, encodeTiff } from '../../imaging/codecs/encodePicture.ts';
import { storedTurned, withOrientationTag } from './exifTurn.ts';
import type { FileSettings } from './pairCase.ts';
import type { RenderedPicture } from './takePhotograph.ts';

export const fileEnding: Readonly<Record<FileSettings['kind'], string>> = {
  jpeg: 'jpg',
  png16: 'png',
  tiff16: 'tif',
};

/** A rendered picture as the file a camera would hand over. 16-bit kinds need a picture rendered with 16 bits. */
export async function encodePicture(picture: RenderedPicture, files: FileSettings): Promise<Uint8Array> {
  const stored = { ...storedTurned(picture, files.exifOrientation), channels: 3 as const };
  switch (files.kind) {
    case 'jpeg': {
      if (!(stored.codes instanceof Uint8Array))
        throw new Error('A JPEG needs a picture rendered with 8 bits.');
      const jpeg = await encodeJpeg({ ...stored, codes: stored.codes }, files.quality);
      return files.exifOrientation === 1 ? jpeg : withOrientationTag(jpeg, files.exifOrientation);
    }
    case 'png16':
      return await encodePng(stored);
    case 'tiff16':
      return await encodeTiff(stored);
    default:
      return files.kind satisfies never;
  }
}
