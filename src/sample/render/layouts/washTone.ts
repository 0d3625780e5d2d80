import { seededRandom } from '../../../foundation/random.ts';
import type { Point } from '../../../science/geometry/point.ts';
import type { AreaMark } from '../drawing.ts';
import { noiseAt, noiseField } from '../noise.ts';

/**
 * A wash of a mean tone inside a polygon: mottled where it pooled, darker along its rim where it dried last,
 * with a few tide marks (a level line of a smooth field, dark on one side and fading on the other).
 */
export function washTone(seed: number, mean: number, polygonMm: readonly Point[]): AreaMark['tone'] {
  const random = seededRandom(seed);
  const pools = noiseField(random, 460, 460, 1, [
    [46, 1],
    [16, 0.45],
    [5, 0.18],
  ]);
  const speckle = noiseField(random, 401, 409, 4, [
    [0.5, 1],
    [1.4, 0.8],
  ]);
  const levels = [-0.8, 0.1, 0.9];
  return (x, y) => {
    const pool = noiseAt(pools, x + 30, y + 30);
    let tone = mean * (1 + 0.16 * pool + 0.1 * noiseAt(speckle, x, y));
    for (const level of levels) {
      const past = pool - level;
      if (past > 0 && past < 0.4) tone += 0.2 * mean * Math.exp(-past / 0.045);
    }
    tone += 0.25 * mean * Math.exp(-rimDistanceMm(polygonMm, x, y) / 0.8);
    return Math.min(1, Math.max(0.004, tone));
  };
}

function rimDistanceMm(polygonMm: readonly Point[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < polygonMm.length; i++) {
    const a = polygonMm[i]!;
    const b = polygonMm[(i + 1) % polygonMm.length]!;
    const dx = b[0] - a[0];
    const dy = b[1] - a[1];
    const along = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
    const distance = Math.hypot(x - a[0] - along * dx, y - a[1] - along * dy);
    if (distance < least) least = distance;
  }
  return least;
}
