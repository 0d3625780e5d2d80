import type { Corners, Point } from '../../science/geometry/point.ts';
import { type Stride, strides } from './keyStride.ts';

export type CornerIndex = 0 | 1 | 2 | 3;
export const cornerIndexes: readonly CornerIndex[] = [0, 1, 2, 3];

/** Where marks start when nothing was found: an eighth in from each side, clockwise from top left. Photograph px. */
export function startingCorners(widthPx: number, heightPx: number): Corners {
  const [x, y] = [Math.round(widthPx / 8), Math.round(heightPx / 8)];
  return [
    [x, y],
    [widthPx - x, y],
    [widthPx - x, heightPx - y],
    [x, heightPx - y],
  ];
}

/** The marks with one of them put at `toPx`, kept within the photograph and to hundredths of a pixel. */
export function moveCorner<Marks extends readonly Point[]>(
  corners: Marks,
  index: CornerIndex,
  toPx: Point,
  sizePx: Point,
): Marks {
  const keep = (value: number, size: number) => Math.round(Math.min(Math.max(value, 0), size) * 100) / 100;
  const moved: Point = [keep(toPx[0], sizePx[0]), keep(toPx[1], sizePx[1])];
  return corners.map((corner, at) => (at === index ? moved : corner)) as unknown as Marks;
}

/** The marks with one of them moved on by `byPx`, kept as `moveCorner` keeps it. */
export function pushCorner<Marks extends readonly Point[]>(
  corners: Marks,
  index: CornerIndex,
  byPx: Point,
  sizePx: Point,
): Marks {
  const [x, y] = corners[index]!;
  return moveCorner(corners, index, [x + byPx[0], y + byPx[1]], sizePx);
}

/** The step of an arrow key, px of a photograph or mm of a stone, y down; null for other keys. */
export function stepOfKey(key: string, stride: Stride): Point | null {
  const step = strides[stride];
  switch (key) {
    case 'ArrowLeft':
      return [-step, 0];
    case 'ArrowRight':
      return [step, 0];
    case 'ArrowUp':
      return [0, -step];
    case 'ArrowDown':
      return [0, step];
    default:
      return null;
  }
}

/** A print is the stone's mirror image: the stone's TL, TR, BR, BL lie where the print's TR, TL, BL, BR are. */
export function mirrored(asSeen: Corners): Corners {
  return [asSeen[1], asSeen[0], asSeen[3], asSeen[2]];
}

/**
 * Corners that were found on a print, in the stone's order. Where they begin at the mark with the F, which is the stone's
 * top left, they run the other way round from it, however the print lies; else the print is taken to lie upright.
 */
export function foundOnPrint(asSeen: Corners, letter: boolean): Corners {
  return letter ? [asSeen[0], asSeen[3], asSeen[2], asSeen[1]] : mirrored(asSeen);
}

/** The same four places, each mark handed on to the next: for a print that lies a quarter turn round. */
export function handedOn(corners: Corners): Corners {
  return [corners[1], corners[2], corners[3], corners[0]];
}

/** What is wrong with four marks: sides that cross, or all but on one line; null when they enclose an area. */
export function cornerTrouble(corners: Corners): 'crossed' | 'flat' | null {
  const turn = (a: Point, b: Point, c: Point) =>
    (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  const turns = cornerIndexes.map((i) => turn(corners[i], corners[(i + 1) % 4]!, corners[(i + 2) % 4]!));
  const longest = Math.max(...cornerIndexes.map((i) => distance(corners[i], corners[(i + 1) % 4]!)));
  if (turns.some((value) => Math.abs(value) < 0.002 * longest * longest)) return 'flat';
  return turns.every((value) => value > 0) || turns.every((value) => value < 0) ? null : 'crossed';
}

/** The mark nearest to a place, and how far it is. */
export function nearestCorner(
  corners: readonly Point[],
  atPx: Point,
): { index: CornerIndex; distancePx: number } {
  const distances = corners.map((corner) => distance(corner, atPx));
  const index = distances.indexOf(Math.min(...distances)) as CornerIndex;
  return { index, distancePx: distances[index]! };
}

/** Width over height of what the marks enclose, from the mean lengths of opposite sides. */
export function cornerAspect(corners: Corners): number {
  const across = distance(corners[0], corners[1]) + distance(corners[3], corners[2]);
  const down = distance(corners[0], corners[3]) + distance(corners[1], corners[2]);
  return across / Math.max(down, 1e-9);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
