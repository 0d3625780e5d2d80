import { openCodes, openPicture } from '../../src/imaging/codecs/pictureLibrary.ts';

export interface GreyPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** 0 black … 255 white, row by row. */
  readonly codes: Uint8Array;
}

/** Reads a PNG as 8-bit grey. */
export async function readGrey(png: Uint8Array): Promise<GreyPicture> {
  const { data, info } = await openPicture(png)
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const codes = new Uint8Array(info.width * info.height);
  for (let pixel = 0; pixel < codes.length; pixel++) codes[pixel] = data[pixel * info.channels]!;
  return { widthPx: info.width, heightPx: info.height, codes };
}

/** Writes an 8-bit grey PNG. */
export async function writeGrey(picture: GreyPicture): Promise<Uint8Array> {
  return openCodes(picture.codes, picture.widthPx, picture.heightPx, 1).toColourspace('b-w').png().toBuffer();
}
