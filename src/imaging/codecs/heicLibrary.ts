import decode from 'heic-decode';

/** A decoded HEIC picture: upright (its own turn applied), 8-bit RGBA, row by row. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** Decodes the first picture of a HEIC file; throws when the file is damaged. Blocks its thread while it works. */
export function decodeHeic(bytes: Uint8Array): Promise<HeicPixels> {
  return decode({ buffer: bytes });
}
