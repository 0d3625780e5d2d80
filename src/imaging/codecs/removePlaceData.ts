import { type PictureKind, pictureKind } from './pictureKind.ts';
import { blankTiffPlace } from './placeData/blankTiffPlace.ts';
import { heicWithoutPlace } from './placeData/heicWithoutPlace.ts';
import { jpegWithoutPlace } from './placeData/jpegWithoutPlace.ts';
import { pngWithoutPlace } from './placeData/pngWithoutPlace.ts';
import { webpWithoutPlace } from './placeData/webpWithoutPlace.ts';

/**
 * The bytes of a photograph without the place where it was taken, for keeping: GPS directories and the XMP and
 * IPTC blocks that may name a place. Picture data is never touched, let alone compressed again; orientation,
 * profile and exposure data stay. JPEG, PNG, WebP and TIFF are followed through their structure; HEIC is searched.
 * Maker notes are left alone, and BigTIFF is returned as it is. Files of no known kind come back unchanged, and so
 * do damaged ones as far as they can't be followed.
 *
 * @param bytes never changed
 * @param kind where it is known already
 */
export function removePlaceData(
  bytes: Uint8Array,
  kind: PictureKind | null = pictureKind(bytes),
): Uint8Array {
  switch (kind) {
    case 'jpeg':
      return jpegWithoutPlace(bytes);
    case 'png':
      return pngWithoutPlace(bytes);
    case 'webp':
      return webpWithoutPlace(bytes);
    case 'heic':
      return heicWithoutPlace(bytes);
    case 'tiff': {
      const copy = bytes.slice();
      blankTiffPlace(copy);
      return copy;
    }
    case null:
      return bytes;
    default:
      return kind satisfies never;
  }
}
