import type { Point } from './point.ts';
import { containsPoint, distanceToOutline } from './polygon.ts';

/** A place made of rings (inside an odd number of them) without some other polygons. All in one unit. */
export interface Place {
  readonly rings: readonly (readonly Point[])[];
  readonly without: readonly (readonly Point[])[];
}

interface Cell {
  readonly centre: Point;
  readonly half: number;
  /** Distance from the centre to the nearest edge; negative outside. */
  readonly distance: number;
  /** The largest distance that any point of the cell could have. */
  readonly most: number;
}

/**
 * The point inside a place that lies farthest from all its edges, with that distance: room for a label.
 * Found by halving square cells, the most promising first (pole of inaccessibility: Garcia-Castellanos & Lombardo
 * 2007, doi 10.1080/14702540801897809; the search by cells is common knowledge).
 * @param precision the distance found is at most this much less than the largest; above 0.
 * @returns null where no cell's centre was found inside: an empty place, or one thinner than the precision.
 */
export function roomiestPoint(
  place: Place,
  precision: number,
): { readonly point: Point; readonly radius: number } | null {
  const points = place.rings.flat();
  if (points.length === 0) return null;
  const [left, right] = bounds(points.map(([x]) => x));
  const [top, bottom] = bounds(points.map(([, y]) => y));
  const half = Math.min(right - left, bottom - top) / 2;
  if (!(half > 0)) return null;
  const waiting: Cell[] = [];
  for (let x = left + half; x < right + half; x += 2 * half) {
    for (let y = top + half; y < bottom + half; y += 2 * half) waiting.push(cellAt(place, [x, y], half));
  }
  let best: Cell | null = null;
  while (waiting.length > 0) {
    const cell = takeMostPromising(waiting);
    if (cell.distance > Math.max(0, best?.distance ?? 0)) best = cell;
    if (cell.most - (best?.distance ?? 0) <= precision) continue;
    const quarter = cell.half / 2;
    for (const dx of [-quarter, quarter]) {
      for (const dy of [-quarter, quarter]) {
        waiting.push(cellAt(place, [cell.centre[0] + dx, cell.centre[1] + dy], quarter));
      }
    }
  }
  return best && { point: best.centre, radius: best.distance };
}

/** Distance from a point to the nearest edge of a place, negative outside it; −Infinity for a place without rings. */
export function roomAt(place: Place, point: Point): number {
  if (place.rings.length === 0) return Number.NEGATIVE_INFINITY;
  const outlines = [...place.rings, ...place.without];
  const nearest = Math.min(...outlines.map((outline) => distanceToOutline(outline, point)));
  const crossings = place.rings.filter((ring) => containsPoint(ring, point)).length;
  const inside = crossings % 2 === 1 && !place.without.some((other) => containsPoint(other, point));
  return inside ? nearest : -nearest;
}

function cellAt(place: Place, centre: Point, half: number): Cell {
  const distance = roomAt(place, centre);
  return { centre, half, distance, most: distance + half * Math.SQRT2 };
}

function takeMostPromising(cells: Cell[]): Cell {
  let first = 0;
  for (let index = 1; index < cells.length; index++) {
    if (cells[index]!.most > cells[first]!.most) first = index;
  }
  const [cell] = cells.splice(first, 1);
  return cell!;
}

function bounds(values: readonly number[]): readonly [number, number] {
  return [
    values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
    values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
  ];
}
