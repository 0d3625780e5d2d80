import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { PlaceMm } from './linkedView.ts';

/** The letter a zone goes by on screen: A … Z, then AA, AB … */
export function zoneLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : zoneLetter(Math.floor(index / 26) - 1) + last;
}

/** The smallest upright rectangle round a zone. */
export function zoneBounds(zone: Zone): PlaceMm {
  const xs = zone.polygonMm.map(([x]) => x);
  const ys = zone.polygonMm.map(([, y]) => y);
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** Grows a place by a share of its size on every side, so that what lies about it shows too. */
export function withSurroundings(place: PlaceMm, share: number): PlaceMm {
  const grow = Math.max(place.max[0] - place.min[0], place.max[1] - place.min[1]) * share;
  return {
    min: [place.min[0] - grow, place.min[1] - grow],
    max: [place.max[0] + grow, place.max[1] + grow],
  };
}

/** The smallest zone that holds a place on the stone; null where there is only ground. */
export function zoneAt(zones: readonly Zone[], stoneMm: Point): Zone | null {
  const area = (zone: Zone) => {
    const { min, max } = zoneBounds(zone);
    return (max[0] - min[0]) * (max[1] - min[1]);
  };
  const holding = zones.filter((zone) => holds(zone.polygonMm, stoneMm));
  return holding.reduce<Zone | null>(
    (best, zone) => (best === null || area(zone) < area(best) ? zone : best),
    null,
  );
}

/** Even–odd rule; points on the outline may fall either way. */
function holds(polygonMm: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  polygonMm.forEach(([ax, ay], at) => {
    const [bx, by] = polygonMm[(at + 1) % polygonMm.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}
