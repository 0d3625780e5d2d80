import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import { darkPlaces } from './cornerMarks/darkPlaces.ts';
import { type RightAngle, rightAngleOf } from './cornerMarks/rightAngle.ts';
import { sharpCorner } from './cornerMarks/sharpCorner.ts';

/** Four marks that stand at the corners of a rectangle. */
export interface FoundMarks {
  /** Photograph px, clockwise; from the mark with the F where one has it, otherwise from the top left as seen. */
  readonly corners: Corners;
  /** Whether one of them has the F, and so is the first. */
  readonly letter: boolean;
  /** 0..1: how alike the marks are, and how well their rectangle has the given shape. */
  readonly sure: number;
}

/** How far the marks' rectangle may be from the given shape, as the log of the ratio: tilt changes it. */
const shapeTolerance = 0.14;
/** Marks of one rectangle are about the same size; perspective makes the near ones larger. */
const alike = 1.7;
/** The rectangle of the marks fills at least this share of the photograph. */
const leastShare = 0.08;
/** Only so many of each corner are tried, the cleanest first. */
const tried = 12;

/**
 * Finds four right angles that mark the corners of a rectangle: drawn strokes, or broad bars laid round it.
 * @param sizeMm where given, a rectangle of another shape is not taken.
 */
export function findCornerMarks(photo: Photograph, sizeMm?: Point): FoundMarks | null {
  const angles = darkPlaces(photo).flatMap((place) => rightAngleOf(place, 0) ?? []);
  const [topLeft, topRight, bottomRight, bottomLeft] = ([0, 1, 2, 3] as const).map((corner) =>
    angles
      .filter((angle) => angle.corner === corner)
      .toSorted((a, b) => flaw(a) - flaw(b))
      .slice(0, tried),
  ) as [RightAngle[], RightAngle[], RightAngle[], RightAngle[]];
  let best: { marks: readonly RightAngle[]; score: number } | null = null;
  for (const a of topLeft)
    for (const c of bottomRight) {
      if (!belong(a, c)) continue;
      for (const b of topRight)
        for (const d of bottomLeft) {
          const marks = [a, b, c, d];
          const score = scoreOf(marks, photo, sizeMm);
          if (score !== null && (best === null || score > best.score)) best = { marks, score };
        }
    }
  if (!best) return null;
  const corners = best.marks.map((mark) => sharpCorner(photo, mark));
  const lettered = markWithLetter(best.marks);
  const first = lettered ?? 0;
  return {
    corners: [0, 1, 2, 3].map((i) => corners[(first + i) % 4]!) as unknown as Corners,
    letter: lettered !== null,
    sure: Math.max(0.5, Math.min(0.95, best.score)),
  };
}

/** Whether two marks could belong together. */
function belong(a: RightAngle, b: RightAngle): boolean {
  return a.edge === b.edge && Math.max(sizeOf(a) / sizeOf(b), sizeOf(b) / sizeOf(a)) <= alike;
}

/** Higher is better, about 1 at best; null where the four make no rectangle. */
function scoreOf(marks: readonly RightAngle[], photo: Photograph, sizeMm?: Point): number | null {
  const sizes = marks.map(sizeOf);
  const spread = Math.max(...sizes) / Math.min(...sizes);
  if (spread > alike || marks.some((mark) => mark.edge !== marks[0]!.edge)) return null;
  const [a, b, c, d] = marks.map((mark) => mark.atPx) as unknown as Corners;
  const along = (lengthOf(a, b) + lengthOf(d, c)) / 2;
  const down = (lengthOf(a, d) + lengthOf(b, c)) / 2;
  const share = (along * down) / (photo.widthPx * photo.heightPx);
  if (b[0] < a[0] || c[1] < b[1] || d[1] < a[1] || c[0] < d[0] || share < leastShare) return null;
  if (Math.min(along, down) < 5 * Math.max(...sizes)) return null;
  const shapes = sizeMm ? [sizeMm[0] / sizeMm[1], sizeMm[1] / sizeMm[0]] : [];
  const off = Math.min(...shapes.map((shape) => Math.abs(Math.log(along / down / shape))));
  if (sizeMm && off > shapeTolerance) return null;
  const opposite =
    Math.abs(Math.log(lengthOf(a, b) / lengthOf(d, c))) + Math.abs(Math.log(lengthOf(a, d) / lengthOf(b, c)));
  const flaws = marks.reduce((sum, mark) => sum + flaw(mark), 0) / 4;
  return 1 - 0.4 * Math.log(spread) - 1.2 * flaws - (sizeMm ? 1.5 * off : 0) - 0.5 * opposite;
}

/** How far an angle is from two clean arms of the same length. */
function flaw(angle: RightAngle): number {
  return Math.min(angle.extra, 0.2) + 0.3 * Math.abs(Math.log(angle.armsPx[0] / angle.armsPx[1]));
}

/** The one mark with a third arm, where the others have none; null where none stands out. */
function markWithLetter(marks: readonly RightAngle[]): number | null {
  const order = [0, 1, 2, 3].toSorted((i, j) => marks[j]!.extra - marks[i]!.extra);
  const [most, next] = [marks[order[0]!]!.extra, marks[order[1]!]!.extra];
  return most > 0.1 && most > 3 * next ? order[0]! : null;
}

function sizeOf(angle: RightAngle): number {
  return Math.sqrt(angle.armsPx[0] * angle.armsPx[1]);
}

function lengthOf(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
