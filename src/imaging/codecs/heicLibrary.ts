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
  if (endsEarly(bytes)) throw new Error('the file ends before its data do');
  const turn = last.then(() => decodeQuietly(bytes));
  last = turn.catch(() => {});
  return turn;
}

/** The decoding before this one: only one at a time may listen to what the library says. */
let last: Promise<unknown> = Promise.resolve();

/** How the library begins what it writes to the terminal when it fails; why it failed is told there alone. */
const complaints =
  /^(?:Decoding image failed|Could not (?:create|parse|get)|Error loading image|No images found)/;

async function decodeQuietly(bytes: Uint8Array): Promise<HeicPixels> {
  const { log } = console;
  let why: string | null = null;
  console.log = (...parts: unknown[]) => {
    if (complaints.test(String(parts[0]))) why ??= reasonIn(parts);
    else log(...parts);
  };
  try {
    // a third of a second of a core to load: only whoever meets such a file waits for it
    const { default: decode } = await import('heic-decode');
    return await decode({ buffer: bytes });
  } catch (error) {
    throw why === null ? error : new Error(why);
  } finally {
    console.log = log;
  }
}

/** The library's own sentence where it gave one, else how it began. */
function reasonIn(parts: readonly unknown[]): string {
  for (const part of parts.slice(1)) {
    if (typeof part === 'string') return part;
    if (typeof part === 'object' && part !== null && 'message' in part) return String(part.message);
  }
  return String(parts[0]);
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
