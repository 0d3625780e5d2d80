import type { Point } from './point.ts';

/**
 * Area of a closed polygon by the shoelace rule, in the square of the points' unit.
 * Positive for points that run clockwise on a plane with y down (top left → top right → bottom right).
 */
export function signedArea(polygon: readonly Point[]): number {
  let twice = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % polygon.length]!;
    twice += a[0] * b[1] - b[0] * a[1];
  }
  return twice / 2;
}

/** Centre of the area; the mean of the points where there is no area; NaN for no points. */
export function centroid(polygon: readonly Point[]): Point {
  const area = signedArea(polygon);
  let x = 0;
  let y = 0;
  if (Math.abs(area) < 1e-12) {
    for (const point of polygon) {
      x += point[0];
      y += point[1];
    }
    return [x / polygon.length, y / polygon.length];
  }
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % polygon.length]!;
    const cross = a[0] * b[1] - b[0] * a[1];
    x += (a[0] + b[0]) * cross;
    y += (a[1] + b[1]) * cross;
  }
  return [x / (6 * area), y / (6 * area)];
}

/** Whether a point lies inside (even–odd rule); points on the outline may fall either way. */
export function containsPoint(polygon: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const a = polygon[i]!;
    const b = polygon[j]!;
    if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}

/** Twice the signed area of the triangle a, b, c. */
function turnOf(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Whether c, known to be on the line through a and b, lies between them. */
function between(a: Point, b: Point, c: Point): boolean {
  return (
    Math.min(a[0], b[0]) <= c[0] &&
    c[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= c[1] &&
    c[1] <= Math.max(a[1], b[1])
  );
}

/** Whether the closed segments a–b and c–d share a point. */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const abc = turnOf(a, b, c);
  const abd = turnOf(a, b, d);
  const cda = turnOf(c, d, a);
  const cdb = turnOf(c, d, b);
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && between(a, b, c)) ||
    (abd === 0 && between(a, b, d)) ||
    (cda === 0 && between(c, d, a)) ||
    (cdb === 0 && between(c, d, b))
  );
}

/** Whether two sides that are not neighbours meet, or two neighbours fold back on each other. */
export function crossesItself(polygon: readonly Point[]): boolean {
  const count = polygon.length;
  for (let i = 0; i < count; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % count]!;
    const after = polygon[(i + 2) % count]!;
    const folds =
      turnOf(a, b, after) === 0 && (b[0] - a[0]) * (after[0] - b[0]) + (b[1] - a[1]) * (after[1] - b[1]) < 0;
    if (folds) return true;
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (segmentsMeet(a, b, polygon[j]!, polygon[(j + 1) % count]!)) return true;
    }
  }
  return false;
}

/** Whether the outline turns one way only and encloses an area; straight angles are allowed. */
export function isConvex(polygon: readonly Point[]): boolean {
  const count = polygon.length;
  if (count < 3 || crossesItself(polygon)) return false;
  let sign = 0;
  for (let i = 0; i < count; i++) {
    const turn = Math.sign(turnOf(polygon[i]!, polygon[(i + 1) % count]!, polygon[(i + 2) % count]!));
    if (turn === 0) continue;
    if (sign === 0) sign = turn;
    else if (turn !== sign) return false;
  }
  return sign !== 0;
}

/**
 * The convex hull, clockwise with y down, without points on its sides.
 * Monotone chain (Andrew, A. M. (1979), Information Processing Letters 9(5), doi 10.1016/0020-0190(79)90072-3).
 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const half = (ordered: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of ordered) {
      while (chain.length >= 2 && turnOf(chain[chain.length - 2]!, chain[chain.length - 1]!, point) <= 0)
        chain.pop();
      chain.push(point);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Shortest distance from a point to the outline, in the points' unit; inside and outside alike. */
export function distanceToOutline(polygon: readonly Point[], [x, y]: Point): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % polygon.length]!;
    const dx = b[0] - a[0];
    const dy = b[1] - a[1];
    const lengthSquared = dx * dx + dy * dy;
    const along =
      lengthSquared === 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / lengthSquared));
    best = Math.min(best, Math.hypot(x - a[0] - along * dx, y - a[1] - along * dy));
  }
  return best;
}

/**
 * The outline moved outward (positive) or inward (negative) by a distance, with mitred corners limited to
 * three times the distance. Meant for distances well under the polygon's width; an inset that eats a narrow
 * polygon may cross itself, which `crossesItself` tells.
 */
export function offsetPolygon(polygon: readonly Point[], distance: number): Point[] {
  const outward = signedArea(polygon) >= 0 ? distance : -distance;
  const distinct = polygon.filter((point, i) => {
    const next = polygon[(i + 1) % polygon.length]!;
    return point[0] !== next[0] || point[1] !== next[1];
  });
  const count = distinct.length;
  const normals = distinct.map((a, i): Point => {
    const b = distinct[(i + 1) % count]!;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return [(b[1] - a[1]) / length, -(b[0] - a[0]) / length];
  });
  return distinct.map((point, i): Point => {
    const before = normals[(i + count - 1) % count]!;
    const after = normals[i]!;
    const sum: Point = [before[0] + after[0], before[1] + after[1]];
    const scale = Math.min(
      2 / Math.max(sum[0] * sum[0] + sum[1] * sum[1], 1e-9),
      3 / Math.max(Math.hypot(...sum), 1e-9),
    );
    return [point[0] + sum[0] * scale * outward, point[1] + sum[1] * scale * outward];
  });
}
