import { openCodes, type PictureHandle } from './pictureLibrary.ts';

/** Interleaved sRGB code values to be written as a picture file; 8 or 16 bits by the array's type. */
export interface CodedPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly channels: 1 | 3;
  readonly codes: Uint8Array | Uint16Array;
}

/** Writes a PNG of the same depth and channels, code by code as given and without a profile. */
export async function encodePng(picture: CodedPicture): Promise<Uint8Array> {
  return await open(picture).png({ compressionLevel: 6 }).toBuffer();
}

/** Writes a TIFF of the same depth and channels, losslessly packed and without a profile. */
export async function encodeTiff(picture: CodedPicture): Promise<Uint8Array> {
  return await open(picture).tiff({ compression: 'deflate' }).toBuffer();
}

/** Writes a baseline JPEG with full colour resolution. `picture` must be 8-bit. Quality 1..100. */
export async function encodeJpeg(
  picture: CodedPicture & { readonly codes: Uint8Array },
  quality = 88,
): Promise<Uint8Array> {
  return await open(picture).jpeg({ quality, chromaSubsampling: '4:4:4' }).toBuffer();
}

function open({ codes, widthPx, heightPx, channels }: CodedPicture): PictureHandle {
  const wide = codes instanceof Uint16Array;
  const space = channels === 1 ? (wide ? 'grey16' : 'b-w') : wide ? 'rgb16' : 'srgb';
  return openCodes(codes, widthPx, heightPx, channels).toColourspace(space);
}
