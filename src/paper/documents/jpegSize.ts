/** Width and height that a JPEG's frame header states, px (ITU-T T.81, B.2.2); null where there is none. */
export function jpegSize(bytes: Uint8Array): { readonly widthPx: number; readonly heightPx: number } | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 9 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1]!;
    const frame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (frame) return { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}
