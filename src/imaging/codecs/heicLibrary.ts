import decode from 'heic-decode';

/** A decoded HEIC picture: upright (its own turn applied), 8-bit RGBA, row by row. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/**
 * Decodes the first picture of a HEIC file; rejects when the file is damaged. Blocks its thread while it works,
 * and keeps its heap (about 6 bytes a pixel) until the thread ends.
 */
export async function decodeHeic(bytes: Uint8Array): Promise<HeicPixels> {
  // The library writes to the terminal when data are missing, so a short file must not reach it.
  if (endsEarly(bytes)) throw new Error('the file ends before its data do');
  return decode({ buffer: bytes });
}

/** Whether a top-level box (ISO/IEC 14496-12, 4.2) reaches past the end of the file. */
function endsEarly(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 0;
  while (at + 8 <= bytes.length) {
    const short = view.getUint32(at);
    if (short === 0) return false;
    const size = short === 1 && at + 16 <= bytes.length ? Number(view.getBigUint64(at + 8)) : short;
    if (size < 8) return true;
    at += size;
  }
  return at !== bytes.length;
}
