import type { Point } from '../../science/geometry/point.ts';
import { apartMm } from './laidAgainst.ts';
import { letterPlace } from './letterPlace.ts';
import { nearestPoint, nearestSide } from './zoneOutline.ts';

/** What of a zone in hand lies under a press: one of its points, its letter, or a side. */
export type Held =
  | { readonly part: 'point'; readonly index: number }
  | { readonly part: 'letter' }
  | { readonly part: 'side'; readonly after: number; readonly at: Point };

/** What a press at a place takes hold of; null inside the zone and elsewhere. A side is only half as easy to catch. */
export function heldAt(outline: readonly Point[], placeMm: Point, reachMm: number): Held | null {
  const point = nearestPoint(outline, placeMm);
  if (point.mm <= reachMm) return { part: 'point', index: point.index };
  if (apartMm(letterPlace(outline), placeMm) <= reachMm) return { part: 'letter' };
  const { after, at, mm } = nearestSide(outline, placeMm);
  return mm <= reachMm / 2 ? { part: 'side', after, at } : null;
}
