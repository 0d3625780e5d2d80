/**
 * A decoded photograph: upright (EXIF orientation applied), colours in sRGB primaries, still gamma-coded.
 * Code values stay integers to hold memory down; `toLinear` gives the linear light of a code value.
 */
export interface Photograph {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly channels: 1 | 3;
  /** Interleaved code values, row by row: `codes[(y * widthPx + x) * channels + c]`. Backed by shared memory where possible. */
  readonly codes: Uint8Array | Uint16Array;
  /** Linear light 0..1 for every code value: 256 or 65,536 entries (IEC 61966-2-1 unless a chip fit replaced it). */
  readonly toLinear: Float32Array;
}
