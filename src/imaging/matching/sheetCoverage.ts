import type { Point } from '../../science/geometry/point.ts';
import { containsPoint } from '../../science/geometry/polygon.ts';
import { mapPoint, rowMapper } from '../operations/mapPoint.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { Frame, Mask } from '../raster.ts';
import type { SheetOutline } from './sheetOutline.ts';

const maskPxPerMm = 2;
/** An outline less clear than this is not trusted to say where paper ends. */
const leastConfidence = 0.4;
/** A deckle edge wobbles about its hull; so near to it a place is not counted as sheet, or the table would pass for a dark print. */
const edgeMm = 2;

/**
 * Where the sheet lies under the work rectangle: inside the photograph and, where the sheet's outline is clear, inside it.
 * @returns exactly the work rectangle at 2 px/mm, 255 on the sheet.
 */
export function coveredBySheet(
  map: PlaneMap,
  outline: SheetOutline | null,
  photo: Photograph,
  [widthMm, heightMm]: Point,
): Mask {
  const widthPx = Math.round(widthMm * maskPxPerMm);
  const heightPx = Math.round(heightMm * maskPxPerMm);
  const data = new Uint8Array(widthPx * heightPx);
  const hull = outline && outline.sure >= leastConfidence ? outline.hullPx : null;
  const edgePx = edgeMm * pxPerMmOf(map, [widthMm / 2, heightMm / 2]);
  const wholeInside = hull !== null && cornersInside(map, hull, [widthMm, heightMm], edgePx);
  const frame: Frame = { widthPx, heightPx, pxPerMm: maskPxPerMm, originMm: [0, 0] };
  const mapRow = rowMapper(map, frame);
  const xs = new Float64Array(widthPx);
  const ys = new Float64Array(widthPx);
  for (let y = 0; y < heightPx; y++) {
    mapRow(y, xs, ys);
    for (let x = 0; x < widthPx; x++) {
      const [px, py] = [xs[x]!, ys[x]!];
      const onPhoto = px >= 0 && py >= 0 && px <= photo.widthPx && py <= photo.heightPx;
      const onSheet = wholeInside || hull === null || insideBy(hull, [px, py], edgePx);
      if (onPhoto && onSheet) data[y * widthPx + x] = 255;
    }
  }
  return { ...frame, data };
}

/** The rectangle is convex on the photograph but for the stretch: corners well inside a convex hull mean all of it is. */
function cornersInside(
  map: PlaneMap,
  hull: readonly Point[],
  [widthMm, heightMm]: Point,
  edgePx: number,
): boolean {
  const corners: readonly Point[] = [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ];
  return corners.every((corner) => insideBy(hull, mapPoint(map, corner), 3 * edgePx));
}

/** Inside a convex hull and at least so far from every side. */
function insideBy(hull: readonly Point[], point: Point, byPx: number): boolean {
  if (!containsPoint(hull, point)) return false;
  return hull.every((from, i) => {
    const to = hull[(i + 1) % hull.length]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const off =
      Math.abs((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0])) / length;
    return off >= byPx;
  });
}

function pxPerMmOf(map: PlaneMap, [x, y]: Point): number {
  const here = mapPoint(map, [x, y]);
  const there = mapPoint(map, [x + 1, y]);
  return Math.hypot(there[0] - here[0], there[1] - here[1]);
}
