import type { CameraFrame } from './cameraFrame.ts';

/** A grey frame from a rule, codes 0..255. */
export function greyFrame(
  widthPx: number,
  heightPx: number,
  code: (x: number, y: number) => number,
): CameraFrame {
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      const at = 4 * (y * widthPx + x);
      rgba.fill(code(x, y), at, at + 3);
      rgba[at + 3] = 255;
    }
  return { widthPx, heightPx, rgba };
}

/** Fine marks that do not repeat: pseudo-random codes around a mean, the same each time. */
export function drawnCode(x: number, y: number): number {
  const noise = Math.sin(x * 12.9898 + y * 78.233) * 43758.5453;
  return 140 + 80 * (noise - Math.floor(noise) - 0.5);
}
