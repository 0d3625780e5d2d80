import type { Point } from '../../science/geometry/point.ts';

/** What a point may be laid against. All stone mm. */
export interface Neighbours {
  /** Closed outlines whose points and edges a point may be laid against. */
  readonly outlines: readonly (readonly Point[])[];
  /** Open lines, such as the outline being drawn. */
  readonly lines: readonly (readonly Point[])[];
  /** Size of the stone, whose border it may be laid against. */
  readonly stoneMm: Point;
}

/** Where a point came to lie, and what it was laid against. */
export interface LaidPlace {
  readonly at: Point;
  readonly to: 'point' | 'edge' | 'stone border' | 'nothing';
}

/**
 * Lays a place against the nearest point within reach, else the nearest edge of a zone, else the stone's border
 * (its corners before its sides). Points come first, so that neighbouring zones share theirs.
 * @param reachMm how near it must be; 0 leaves every place alone.
 */
export function laidAgainst(placeMm: Point, neighbours: Neighbours, reachMm: number): LaidPlace {
  const points = [...neighbours.outlines, ...neighbours.lines].flat();
  const point = nearest(points, placeMm, reachMm);
  if (point) return { at: point, to: 'point' };
  const edge = nearest(footPoints(neighbours, placeMm), placeMm, reachMm);
  if (edge) return { at: edge, to: 'edge' };
  const border = borderPoint(placeMm, neighbours.stoneMm, reachMm);
  return border ? { at: border, to: 'stone border' } : { at: placeMm, to: 'nothing' };
}

/** The place on the segment a–b that lies nearest. */
export function footOn(a: Point, b: Point, placeMm: Point): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return a;
  const along = ((placeMm[0] - a[0]) * dx + (placeMm[1] - a[1]) * dy) / length2;
  const held = Math.min(1, Math.max(0, along));
  return [a[0] + held * dx, a[1] + held * dy];
}

/** Distance between two places. */
export function apartMm(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function footPoints({ outlines, lines }: Neighbours, placeMm: Point): Point[] {
  const closed = outlines.flatMap((outline) =>
    outline.map((a, index) => footOn(a, outline[(index + 1) % outline.length]!, placeMm)),
  );
  const open = lines.flatMap((line) => line.slice(1).map((b, index) => footOn(line[index]!, b, placeMm)));
  return [...closed, ...open];
}

function borderPoint([x, y]: Point, [width, height]: Point, reachMm: number): Point | null {
  const drawn = (value: number, size: number) =>
    Math.abs(value) <= reachMm ? 0 : Math.abs(size - value) <= reachMm ? size : value;
  const at: Point = [drawn(x, width), drawn(y, height)];
  return reachMm > 0 && (at[0] !== x || at[1] !== y) ? at : null;
}

function nearest(points: readonly Point[], placeMm: Point, reachMm: number): Point | null {
  let best: Point | null = null;
  let least = reachMm;
  for (const point of points) {
    const distance = apartMm(point, placeMm);
    if (distance > least || (best !== null && distance === least)) continue;
    best = point;
    least = distance;
  }
  return reachMm > 0 ? best : null;
}
