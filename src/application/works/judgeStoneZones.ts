import { type Failure, failure } from '../../foundation/failure.ts';
import { outlineFault } from '../../science/geometry/outlineFault.ts';
import type { Point } from '../../science/geometry/point.ts';
import { groundId } from '../../studio/etch/planAreas.ts';

/** A point may lie this far over the edge: what a click or a rounding brings. Our rule. */
const edgeToleranceMm = 0.5;
/** Less encloses nothing that could be etched. Our rule. */
const smallestAreaMm2 = 1;

interface StoneZone {
  readonly id: string;
  readonly polygonMm: readonly Point[];
}

/**
 * Judges zones against their stone (stone mm): ids not twice and not ours, every point on the stone, an area,
 * no outline that crosses itself. Null when usable, else the first fault with its path.
 */
export function judgeStoneZones(
  zones: readonly StoneZone[],
  stone: { readonly widthMm: number; readonly heightMm: number },
): Failure | null {
  const ids = new Set<string>();
  for (const [index, zone] of zones.entries()) {
    const path = `zones[${index}]`;
    if (zone.id === groundId) return failure('zone-id-reserved', {}, `${path}.id`);
    if (ids.has(zone.id)) return failure('zone-duplicate', { id: zone.id }, `${path}.id`);
    ids.add(zone.id);
    const off = zone.polygonMm.findIndex((point) => isOff(point, stone));
    if (off >= 0) {
      const size = { width: stone.widthMm, height: stone.heightMm };
      return failure('zone-off-stone', { id: zone.id, ...size }, `${path}.polygonMm[${off}]`);
    }
    const fault = outlineFault(zone.polygonMm, smallestAreaMm2);
    if (fault) return failure(`zone-${fault}`, { id: zone.id }, `${path}.polygonMm`);
  }
  return null;
}

function isOff([x, y]: Point, stone: { readonly widthMm: number; readonly heightMm: number }): boolean {
  const within = (value: number, extent: number) =>
    value >= -edgeToleranceMm && value <= extent + edgeToleranceMm;
  return !within(x, stone.widthMm) || !within(y, stone.heightMm);
}
