import type { Point } from '../../science/geometry/point.ts';
import type { ClassGrid } from './washPlaces.ts';

/**
 * The outlines of all cells of one class, along their sides, as closed rings of corner points in cells from the
 * grid's top left; straight runs keep their ends only. A point inside an odd number of rings lies in the class.
 * Where two cells meet at a corner only, the rings pass it apart, so that no ring crosses itself.
 */
export function tracedRings(grid: ClassGrid, wanted: number): Point[][] {
  const sides = directedSides(grid, wanted);
  const rings: Point[][] = [];
  for (const start of sides.keys()) {
    while (sides.get(start)!.length > 0) rings.push(ringFrom(start, sides, grid.widthPx + 1));
  }
  return rings;
}

/** Steps right, down, left, up; the class lies on the right-hand side of each. */
const steps: readonly Point[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];

/** From each corner, numbered row by row, the directions in which a side of the class's outline leaves it. */
function directedSides({ classes, widthPx, heightPx }: ClassGrid, wanted: number): Map<number, number[]> {
  const corners = widthPx + 1;
  const is = (x: number, y: number) =>
    x >= 0 && y >= 0 && x < widthPx && y < heightPx && classes[y * widthPx + x] === wanted;
  const sides = new Map<number, number[]>();
  const leave = (x: number, y: number, direction: number) => {
    const corner = y * corners + x;
    const known = sides.get(corner);
    if (known) known.push(direction);
    else sides.set(corner, [direction]);
  };
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      if (!is(x, y)) continue;
      if (!is(x, y - 1)) leave(x, y, 0);
      if (!is(x + 1, y)) leave(x + 1, y, 1);
      if (!is(x, y + 1)) leave(x + 1, y + 1, 2);
      if (!is(x - 1, y)) leave(x, y + 1, 3);
    }
  }
  return sides;
}

/** Follows the sides from a corner back to it, turning right where there is a choice: that keeps diagonal cells apart. */
function ringFrom(start: number, sides: Map<number, number[]>, corners: number): Point[] {
  const ring: Point[] = [];
  let corner = start;
  let before = -1;
  do {
    const leaving = sides.get(corner)!;
    const rightTurn = leaving.indexOf((before + 1) % 4);
    const direction = leaving.splice(before >= 0 && rightTurn >= 0 ? rightTurn : 0, 1)[0]!;
    const at: Point = [corner % corners, Math.floor(corner / corners)];
    if (direction !== before) ring.push(at);
    before = direction;
    corner += steps[direction]![0] + steps[direction]![1] * corners;
  } while (corner !== start);
  return ring;
}
