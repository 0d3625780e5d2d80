import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { heicSizes } from './heicSizes.ts';
import { jpegScanCount } from './jpegScans.ts';
import { describeUnknown, type PictureKind, pictureKind } from './pictureKind.ts';
import { openPicture, type PictureMetadata } from './pictureLibrary.ts';

/** Limits that are checked on the header, before anything is decoded. */
export interface PictureLimits {
  readonly megapixels: number;
  readonly megabytes: number;
}

/** Larger than any phone's picture, and small enough for the machine of a small studio: our rule. */
export const defaultPictureLimits: PictureLimits = { megapixels: 60, megabytes: 100 };

const smallestSidePx = 16;
/** Longer sides are no picture, whatever the other one is; the widest that a JPEG can state. */
const longestSidePx = 65_535;
/** Scans of a JPEG: no program writes as many, and each is work for the whole picture. */
const mostScans = 100;

/** What a picture's header says. */
export interface PictureHeader {
  readonly kind: PictureKind;
  /** Upright: after EXIF orientation. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly channels: 1 | 3;
  readonly bits: 8 | 16;
  readonly hasAlpha: boolean;
  /** The embedded ICC profile, null without one. */
  readonly profile: Uint8Array | null;
}

/**
 * Reads and judges a picture's header without decoding it.
 *
 * @param fileName only for the sentences; its ending is never trusted
 * @returns failures: file-empty, file-too-large, picture-unknown-kind, picture-damaged, picture-cmyk,
 * picture-animated, picture-coding (signed, floating or Lab values), picture-too-large, picture-too-small
 */
export async function readHeader(
  bytes: Uint8Array,
  fileName: string,
  limits: PictureLimits = defaultPictureLimits,
): Promise<Result<PictureHeader>> {
  const file = fileName;
  if (bytes.length === 0) return fail(failure('file-empty', { file }));
  const megabytes = bytes.length / 1e6;
  if (megabytes > limits.megabytes) {
    return fail(
      failure('file-too-large', { file, megabytes: Math.ceil(megabytes), limit: limits.megabytes }),
    );
  }
  const kind = pictureKind(bytes);
  if (!kind) return fail(failure('picture-unknown-kind', { file, found: describeUnknown(bytes) }));
  const scans = kind === 'jpeg' ? jpegScanCount(bytes) : 0;
  if (scans > mostScans) {
    const why = `it goes over itself in ${scans} scans; at most ${mostScans} are read`;
    return fail(failure('picture-damaged', { file, why }));
  }
  // the libraries look at one of its pictures each, and not at the same one
  for (const [width, height] of kind === 'heic' ? heicSizes(bytes) : []) {
    if (isTooLarge(width, height, limits)) {
      return fail(failure('picture-too-large', { file, width, height, limit: limits.megapixels }));
    }
  }
  let metadata: PictureMetadata;
  try {
    metadata = await openPicture(bytes).metadata();
  } catch (error) {
    return fail(failure('picture-damaged', { file, why: libraryReason(error) }));
  }
  return judgeHeader(kind, metadata, file, limits);
}

function isTooLarge(width: number, height: number, limits: PictureLimits): boolean {
  return Math.max(width, height) > longestSidePx || (width * height) / 1e6 > limits.megapixels;
}

function judgeHeader(
  kind: PictureKind,
  metadata: PictureMetadata,
  file: string,
  limits: PictureLimits,
): Result<PictureHeader> {
  const { width, height } = metadata.autoOrient;
  if (isTooLarge(width, height, limits)) {
    return fail(failure('picture-too-large', { file, width, height, limit: limits.megapixels }));
  }
  if (Math.min(width, height) < smallestSidePx) {
    return fail(failure('picture-too-small', { file, width, height }));
  }
  if (metadata.space === 'cmyk') return fail(failure('picture-cmyk', { file }));
  if ((metadata.pages ?? 1) > 1) return fail(failure('picture-animated', { file }));
  if (metadata.depth !== 'uchar' && metadata.depth !== 'ushort') {
    return fail(
      failure('picture-coding', { file, what: depthWords[metadata.depth] ?? `${metadata.depth} values` }),
    );
  }
  const colours = metadata.channels - (metadata.hasAlpha ? 1 : 0);
  const known = /^(srgb|rgb16|rgb|b-w|grey16|scrgb|multiband)$/.test(metadata.space);
  if (!known || (colours !== 1 && colours !== 3)) {
    return fail(
      failure('picture-coding', { file, what: `${colours} channels of the kind ${metadata.space}` }),
    );
  }
  return ok({
    kind,
    widthPx: width,
    heightPx: height,
    channels: colours,
    bits: metadata.depth === 'ushort' ? 16 : 8,
    hasAlpha: metadata.hasAlpha,
    profile: metadata.icc ? new Uint8Array(metadata.icc) : null,
  });
}

const depthWords: Readonly<Record<string, string>> = {
  char: 'signed numbers',
  short: 'signed 16-bit numbers',
  int: 'signed 32-bit numbers',
  uint: '32-bit numbers',
  float: 'floating-point numbers',
  double: 'floating-point numbers',
};

/** The first line of what a decoding library said, as words for a sentence. */
export function libraryReason(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  const line = text.split('\n').find((part) => part.trim() !== '') ?? 'no reason was given';
  return line.trim().replace(/\.$/, '');
}
