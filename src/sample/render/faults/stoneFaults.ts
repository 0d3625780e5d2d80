import { seededRandom } from '../../../foundation/random.ts';
import type { Point } from '../../../science/geometry/point.ts';
import type { CoverageRaster } from '../coverageRaster.ts';
import { coarseTone } from './coarseTone.ts';
import type { CellFault, Fault } from './fault.ts';

type Of<Kind extends Fault['kind']> = Extract<Fault, { kind: Kind }>;

const darkFrom = 0.7;

/** Lighter work lost beside darks; with a direction only on that side of them. */
export function halo({ reachMm, amount, towards }: Of<'halo'>, stone: CoverageRaster): CellFault {
  const tone = coarseTone(stone);
  const wide = Math.round(stone.columns / stone.cellsPerMm);
  const high = Math.round(stone.rows / stone.cellsPerMm);
  const loss = new Float32Array(wide * high);
  const reach = Math.ceil(1.5 * reachMm);
  for (let row = 0; row < high; row++) {
    for (let column = 0; column < wide; column++) {
      const [x, y] = [column + 0.5 + stone.originMm[0], row + 0.5 + stone.originMm[1]];
      if (tone(x, y) < darkFrom) continue;
      for (let dy = -reach; dy <= reach; dy++) {
        for (let dx = -reach; dx <= reach; dx++) {
          if (towards && dx * towards[0] + dy * towards[1] < 0) continue;
          const [c, r] = [column + dx, row + dy];
          if (c < 0 || r < 0 || c >= wide || r >= high) continue;
          const share = amount / (1 + Math.exp((Math.hypot(dx, dy) - reachMm) / 0.8));
          if (share > loss[r * wide + c]!) loss[r * wide + c] = share;
        }
      }
    }
  }
  return (own, x, y) => {
    const cell = Math.floor(y - stone.originMm[1]) * wide + Math.floor(x - stone.originMm[0]);
    return tone(x, y) >= darkFrom ? own : own * (1 - (loss[cell] ?? 0));
  };
}

/** Small pale spots anywhere on the work rectangle. */
export function spots({ count, radiusMm, amount, seed }: Of<'spots'>, [width, height]: Point): CellFault {
  const random = seededRandom(seed);
  const places = Array.from({ length: count }, (): Point => [width * random(), height * random()]);
  return (own, x, y) => {
    let kept = own;
    for (const [px, py] of places) {
      const distance = Math.hypot(x - px, y - py);
      if (distance < 2 * radiusMm) kept *= 1 - amount / (1 + Math.exp((distance - radiusMm) / 0.2));
    }
    return kept;
  };
}

/** Places where light work alone is lost, with ragged outlines. */
export function lightPatches(
  { centresMm, radiusMm, upToTone, amount }: Of<'light-patches'>,
  stone: CoverageRaster,
): CellFault {
  const tone = coarseTone(stone);
  return (own, x, y) => {
    let share = 0;
    for (const [px, py] of centresMm) {
      const ragged = radiusMm * (1 + 0.18 * Math.sin(5 * Math.atan2(y - py, x - px) + px));
      share = Math.max(share, amount / (1 + Math.exp((Math.hypot(x - px, y - py) - ragged) / 0.5)));
    }
    if (share < 0.01) return own;
    return own * (1 - share / (1 + Math.exp((tone(x, y) - upToTone) / 0.02)));
  };
}
