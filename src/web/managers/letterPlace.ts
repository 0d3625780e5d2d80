import type { Point } from '../../science/geometry/point.ts';
import { centroid } from '../../science/geometry/polygon.ts';
import { roomAt, roomiestPoint } from '../../science/geometry/roomiestPoint.ts';

const places = new WeakMap<readonly Point[], Point>();

/**
 * Where a zone's letter stands: the middle of its area where that is about as roomy as anywhere, else the roomiest
 * place inside. Kept for as long as the outline is, because it is asked for at every frame.
 */
export function letterPlace(outline: readonly Point[]): Point {
  const kept = places.get(outline);
  if (kept) return kept;
  const place = { rings: [outline], without: [] };
  const middle = centroid(outline);
  const roomiest = roomiestPoint(place, 0.5);
  const stands = roomiest && roomAt(place, middle) < 0.8 * roomiest.radius ? roomiest.point : middle;
  places.set(outline, stands);
  return stands;
}
