/**
 * Widths and heights that a HEIC file states for its pictures, tiles and previews: every `ispe` in `meta/iprp/ipco`
 * (ISO/IEC 23008-12, 6.5.3; boxes ISO/IEC 14496-12, 4.2). Empty where the file can't be followed so far.
 */
export function heicSizes(bytes: Uint8Array): readonly (readonly [width: number, height: number])[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const sizes: [number, number][] = [];
  function walk(from: number, to: number, path: string): void {
    let at = from;
    while (at + 8 <= to) {
      const short = view.getUint32(at);
      const long = short === 1 && at + 16 <= to;
      const size = short === 0 ? to - at : long ? Number(view.getBigUint64(at + 8)) : short;
      if (size < 8) return;
      const end = Math.min(at + size, to);
      const inside = at + (long ? 16 : 8);
      const name = `${path}/${String.fromCharCode(...bytes.subarray(at + 4, at + 8))}`;
      // a full box begins with its version and flags
      if (name === '/meta') walk(inside + 4, end, name);
      else if (name === '/meta/iprp' || name === '/meta/iprp/ipco') walk(inside, end, name);
      else if (name === '/meta/iprp/ipco/ispe' && inside + 12 <= end) {
        sizes.push([view.getUint32(inside + 4), view.getUint32(inside + 8)]);
      }
      at += size;
    }
  }
  walk(0, bytes.length, '');
  return sizes;
}
