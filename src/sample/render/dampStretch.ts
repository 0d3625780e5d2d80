import { seededRandom } from '../../foundation/random.ts';
import type { Point } from '../../science/geometry/point.ts';

/** How damp paper grew under the scraper before it dried: along, across, and unevenly. */
export interface StretchSettings {
  /** Growth across and along as shares, such as 0.01. */
  readonly growth: Point;
  /** Uneven part: greatest displacement in mm of the longest wave. */
  readonly unevenMm: number;
  readonly seed: number;
}

export interface SheetMap {
  /** Stone mm to the sheet's own mm (mirrored unless printed the wrong way round for a test). */
  toSheetMm(stoneMm: Point): Point;
  toStoneMm(sheetMm: Point): Point;
}

/**
 * Stone to sheet and back: a mirror image about the work rectangle's upright middle line, grown and smoothly distorted.
 * Sheet to stone is closed (it paints every pixel); stone to sheet is solved by fixed point (each step shrinks the error fifty-fold).
 */
export function sheetMap(settings: StretchSettings, sizeMm: Point, mirrored: boolean): SheetMap {
  const random = seededRandom(settings.seed);
  const waves = Array.from({ length: 7 }, (_, i) => {
    const lengthMm = 420 / (1 + i * 0.55);
    const direction = random() * 2 * Math.PI;
    return {
      kx: (2 * Math.PI * Math.cos(direction)) / lengthMm,
      ky: (2 * Math.PI * Math.sin(direction)) / lengthMm,
      phase: random() * 2 * Math.PI,
      x: (settings.unevenMm * (random() - 0.5) * 1.6) / (1 + i) ** 1.8,
      y: (settings.unevenMm * (random() - 0.5) * 1.6) / (1 + i) ** 1.8,
    };
  });
  const middle: Point = [sizeMm[0] / 2, sizeMm[1] / 2];
  const displacement = (x: number, y: number): Point => {
    let dx = -settings.growth[0] * (x - middle[0]);
    let dy = -settings.growth[1] * (y - middle[1]);
    for (const wave of waves) {
      const s = Math.sin(wave.kx * x + wave.ky * y + wave.phase);
      dx += wave.x * s;
      dy += wave.y * s;
    }
    return [dx, dy];
  };
  const turned = (x: number) => (mirrored ? sizeMm[0] - x : x);
  return {
    toStoneMm([sheetX, y]) {
      const x = turned(sheetX);
      const [dx, dy] = displacement(x, y);
      return [x + dx, y + dy];
    },
    toSheetMm([stoneX, stoneY]) {
      let x = stoneX;
      let y = stoneY;
      for (let i = 0; i < 10; i++) {
        const [dx, dy] = displacement(x, y);
        x = stoneX - dx;
        y = stoneY - dy;
      }
      return [turned(x), y];
    },
  };
}
