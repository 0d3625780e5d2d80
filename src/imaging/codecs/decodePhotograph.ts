import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Photograph } from '../photograph.ts';
import { decodeHeic } from './heicLibrary.ts';
import { openPicture } from './pictureLibrary.ts';
import { convertGreyInPlace, convertRgbInPlace } from './profile/convertColours.ts';
import { type ColourProfile, readProfile } from './profile/readProfile.ts';
import { srgbTable } from './profile/srgbTable.ts';
import {
  defaultPictureLimits,
  libraryReason,
  type PictureHeader,
  type PictureLimits,
  readHeader,
} from './readHeader.ts';

/**
 * Decodes a photograph: JPEG, PNG, TIFF (8 or 16 bit), WebP or HEIC, told by its first bytes.
 *
 * Upright (EXIF orientation applied); grey pictures keep one channel; 8-bit pictures stay 8-bit and 16-bit ones
 * 16-bit. An embedded matrix or grey profile is converted to sRGB codes; pictures without a profile, 16-bit ones
 * too, are taken as sRGB-coded. 8-bit pictures with a look-up-table profile are converted by the picture library,
 * 16-bit ones refused. Transparent pictures are laid over white. Codes lie in shared memory.
 *
 * @param fileName only for the sentences of failures
 * @returns the failures of `readHeader`, or picture-damaged, or picture-coding for a profile that can't be applied
 */
export async function decodePhotograph(
  bytes: Uint8Array,
  fileName: string,
  limits: PictureLimits = defaultPictureLimits,
): Promise<Result<Photograph>> {
  const header = await readHeader(bytes, fileName, limits);
  if (!header.ok) return header;
  const profile = header.value.profile ? readProfile(header.value.profile) : null;
  if (profile?.model === 'table' && header.value.bits === 16) {
    const what = 'a colour profile made of look-up tables with 16-bit values';
    return fail(failure('picture-coding', { file: fileName, what }));
  }
  let pixels: Pixels;
  try {
    pixels =
      header.value.kind === 'heic'
        ? await heicPixels(bytes)
        : await libraryPixels(bytes, header.value, profile?.model === 'table');
  } catch (error) {
    return fail(failure('picture-damaged', { file: fileName, why: libraryReason(error) }));
  }
  if (profile) convertProfile(pixels, profile);
  return ok({ ...pixels, toLinear: srgbTable(pixels.codes instanceof Uint8Array ? 8 : 16) });
}

type Pixels = Omit<Photograph, 'toLinear'>;

async function libraryPixels(
  bytes: Uint8Array,
  header: PictureHeader,
  applyProfile: boolean,
): Promise<Pixels> {
  const { channels, bits } = header;
  const space = channels === 1 ? (bits === 8 ? 'b-w' : 'grey16') : bits === 8 ? 'srgb' : 'rgb16';
  let picture = openPicture(bytes, applyProfile).autoOrient();
  if (header.hasAlpha) picture = picture.flatten({ background: '#ffffff' });
  const { data, info } = await picture
    .toColourspace(space)
    .raw({ depth: bits === 8 ? 'uchar' : 'ushort' })
    .toBuffer({ resolveWithObject: true });
  if (info.channels !== channels) throw new Error(`${info.channels} channels instead of ${channels}`);
  return { widthPx: info.width, heightPx: info.height, channels, codes: shared(data, bits) };
}

/** A HEIC's own turn is part of decoding it, and its EXIF orientation must not be applied again (ISO/IEC 23008-12). */
async function heicPixels(bytes: Uint8Array): Promise<Pixels> {
  const { width, height, data } = await decodeHeic(bytes);
  const codes = new Uint8Array(new SharedArrayBuffer(width * height * 3));
  for (let pixel = 0; pixel < width * height; pixel++) {
    const opacity = data[4 * pixel + 3]! / 255;
    for (let channel = 0; channel < 3; channel++) {
      codes[3 * pixel + channel] = Math.round(255 + (data[4 * pixel + channel]! - 255) * opacity);
    }
  }
  return { widthPx: width, heightPx: height, channels: 3, codes };
}

function shared(data: Uint8Array, bits: 8 | 16): Uint8Array | Uint16Array {
  const memory = new SharedArrayBuffer(data.byteLength);
  new Uint8Array(memory).set(data);
  return bits === 8 ? new Uint8Array(memory) : new Uint16Array(memory);
}

/** Profiles that don't fit the picture's channels, or can't be read, are passed over: the codes are taken as sRGB. */
function convertProfile(pixels: Pixels, profile: ColourProfile): void {
  switch (profile.model) {
    case 'rgb-matrix':
      if (pixels.channels === 3) convertRgbInPlace(pixels.codes, profile.toConnection, profile.curves);
      return;
    case 'grey-curve':
      if (pixels.channels === 1) convertGreyInPlace(pixels.codes, profile.curve);
      return;
    case 'table':
    case 'unreadable':
      return;
    default: {
      profile satisfies never;
    }
  }
}
