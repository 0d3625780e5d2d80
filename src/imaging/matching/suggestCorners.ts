import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import { findCornerMarks } from './findCornerMarks.ts';
import { type SheetOutline, sheetOutline } from './sheetOutline.ts';

/** Corners as the tool would set them, and how sure it is. */
export interface SuggestedCorners {
  /** Clockwise as seen on the photograph: from the mark with the F where one was seen, otherwise from the top left. */
  readonly corners: Corners;
  /** Whether they begin at a mark with the F. */
  readonly letter: boolean;
  /** 0..1. */
  readonly sure: number;
  /** What they were taken from. */
  readonly kind: 'marks' | 'outline';
}

/** How far the outline's shape may be from the given size before it can't be the work rectangle itself. */
const shapeTolerance = 0.06;

/** Marks that are less alike than this may be parts of the drawing. */
const sureOfMarks = 0.7;

/**
 * Suggests the four corners of the work rectangle: four corner marks, or else the outline of the bright object on the
 * photograph (the four longest sides of its hull, crossed).
 * @param sizeMm where given, marks or an outline of another shape are not offered as the work rectangle.
 */
export function suggestCorners(photo: Photograph, sizeMm?: Point): SuggestedCorners | null {
  const marks = findCornerMarks(photo, sizeMm);
  if (marks && marks.sure >= sureOfMarks) return { ...marks, kind: 'marks' };
  const outline = sheetOutline(photo);
  const corners = outline && fourCorners(outline.hullPx);
  if (!outline || !corners || outline.sure < 0.4) return null;
  if (sizeMm && Math.abs(Math.log(shapeOf(corners) / (sizeMm[0] / sizeMm[1]))) > shapeTolerance) return null;
  return { corners, letter: false, sure: Math.min(0.9, outline.sure), kind: 'outline' };
}

/** Shares of the sheet's width that the work rectangle may fill. */
const fillings = [0.98, 0.9, 0.82, 0.74, 0.66];

/** Guesses of where the rectangle lies on a sheet whose outline is known, or on the whole picture: centred, at several sizes. */
export function guessesFromSheet(photo: Photograph, outline: SheetOutline | null, sizeMm: Point): Corners[] {
  const whole: Corners = [
    [0, 0],
    [photo.widthPx, 0],
    [photo.widthPx, photo.heightPx],
    [0, photo.heightPx],
  ];
  const around = (outline && outline.sure >= 0.4 && fourCorners(outline.hullPx)) || whole;
  const shapes = [sizeMm[0] / sizeMm[1], sizeMm[1] / sizeMm[0]];
  return shapes.flatMap((shape) => fillings.map((filling) => centredWithin(around, shape, filling)));
}

/** A rectangle of that shape (width over height as seen), filling so much of the quadrilateral along its tighter side. */
function centredWithin(around: Corners, shape: number, filling: number): Corners {
  const ratio = shape / shapeOf(around);
  const across = filling * Math.min(1, ratio);
  const down = filling * Math.min(1, 1 / ratio);
  const at = (u: number, v: number): Point => {
    const blend = (i: 0 | 1) =>
      (1 - u) * (1 - v) * around[0][i] +
      u * (1 - v) * around[1][i] +
      u * v * around[2][i] +
      (1 - u) * v * around[3][i];
    return [blend(0), blend(1)];
  };
  const left = (1 - across) / 2;
  const top = (1 - down) / 2;
  return [at(left, top), at(1 - left, top), at(1 - left, 1 - top), at(left, 1 - top)];
}

function shapeOf([topLeft, topRight, bottomRight, bottomLeft]: Corners): number {
  const length = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  return (
    (length(topLeft, topRight) + length(bottomLeft, bottomRight)) /
    (length(topLeft, bottomLeft) + length(topRight, bottomRight))
  );
}

/** Crosses the four longest sides of a convex hull, in order round it; null where they don't make a quadrilateral. */
function fourCorners(hull: readonly Point[]): Corners | null {
  const merged = longSides(hull);
  if (merged.length !== 4) return null;
  const corners = merged.map((side, i) => crossing(merged[(i + 3) % 4]!, side));
  if (corners.some((corner) => corner === null)) return null;
  const points = corners as Point[];
  const cx = points.reduce((sum, point) => sum + point[0], 0) / 4;
  const cy = points.reduce((sum, point) => sum + point[1], 0) / 4;
  const round = points.toSorted(
    (a, b) => Math.atan2(a[1] - cy, a[0] - cx) - Math.atan2(b[1] - cy, b[0] - cx),
  );
  const first = round.reduce(
    (best, point, i) => (point[0] + point[1] < round[best]![0] + round[best]![1] ? i : best),
    0,
  );
  return [0, 1, 2, 3].map((i) => round[(first + i) % 4]!) as unknown as Corners;
}

type Side = readonly [Point, Point];

/** Hull sides that run within a few degrees of each other are one deckled side. */
function longSides(hull: readonly Point[]): Side[] {
  const sides = hull.map((from, i): Side => [from, hull[(i + 1) % hull.length]!]);
  const angle = ([a, b]: Side) => Math.atan2(b[1] - a[1], b[0] - a[0]);
  const four = [0, 1, 2, 3].map((quarter) =>
    sides.filter((side) => {
      const turned = (angle(side) + 2 * Math.PI) % (2 * Math.PI);
      return Math.round(turned / (Math.PI / 2)) % 4 === quarter;
    }),
  );
  return four.flatMap((group) => {
    if (group.length === 0) return [];
    const longest = group.reduce((best, side) => (lengthOf(side) > lengthOf(best) ? side : best));
    const alike = group.filter((side) => Math.abs(angleBetween(angle(side), angle(longest))) < 0.12);
    const total = alike.reduce((sum, side) => sum + lengthOf(side), 0);
    const mean =
      alike.reduce((sum, side) => sum + angleBetween(angle(side), angle(longest)) * lengthOf(side), 0) /
      total;
    const direction = angle(longest) + mean;
    const middle: Point = [0, 1].map(
      (axis) =>
        alike.reduce((sum, [a, b]) => sum + ((a[axis]! + b[axis]!) / 2) * lengthOf([a, b]), 0) / total,
    ) as unknown as Point;
    return [[middle, [middle[0] + Math.cos(direction), middle[1] + Math.sin(direction)]] as Side];
  });
}

function lengthOf([a, b]: Side): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

function angleBetween(a: number, b: number): number {
  return Math.atan2(Math.sin(a - b), Math.cos(a - b));
}

function crossing([a, b]: Side, [c, d]: Side): Point | null {
  const denominator = (a[0] - b[0]) * (c[1] - d[1]) - (a[1] - b[1]) * (c[0] - d[0]);
  if (Math.abs(denominator) < 1e-9) return null;
  const first = a[0] * b[1] - a[1] * b[0];
  const second = c[0] * d[1] - c[1] * d[0];
  return [
    (first * (c[0] - d[0]) - (a[0] - b[0]) * second) / denominator,
    (first * (c[1] - d[1]) - (a[1] - b[1]) * second) / denominator,
  ];
}
