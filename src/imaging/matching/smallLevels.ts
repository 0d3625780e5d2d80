import type { Photograph } from '../photograph.ts';

/**
 * Brightness on a coarse grid, boxes of `step` px averaged.
 * @returns `width × height` codes: log10 of the green light, 0.001 → 0, 1 → 255, so that 85 codes are a factor of ten.
 */
export function smallLevels(photo: Photograph, step: number, width: number, height: number): Uint8Array {
  const { codes, channels, widthPx, toLinear } = photo;
  const out = new Uint8Array(width * height);
  const stride = Math.max(1, Math.floor(step / 3));
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      let count = 0;
      for (let dy = 0; dy < step; dy += stride) {
        for (let dx = 0; dx < step; dx += stride) {
          const at = ((y * step + dy) * widthPx + x * step + dx) * channels;
          sum += toLinear[codes[at + (channels === 3 ? 1 : 0)]!]!;
          count++;
        }
      }
      const log = Math.log10(Math.max(sum / count, 1e-3)) / 3 + 1;
      out[y * width + x] = Math.round(Math.min(1, Math.max(0, log)) * 255);
    }
  }
  return out;
}
