import type { Point } from '../../../science/geometry/point.ts';
import { containsPoint } from '../../../science/geometry/polygon.ts';

/** Places along each side that are tried, and across a label that are looked at. */
const [tried, lookedAt] = [9, 5];

/**
 * Where the label of the ground stands: along the edges of the stone, the bottom left first, where it covers least of
 * what is drawn. Stone mm.
 * @returns its top left corner
 */
export function groundLabelAt(
  [wide, high]: Point,
  [stoneWide, stoneHigh]: Point,
  others: readonly { readonly rings: readonly (readonly Point[])[] }[],
  edge: number,
): Point {
  const [right, bottom] = [stoneWide - edge - wide, stoneHigh - edge - high];
  const along = (from: number, to: number) =>
    Array.from({ length: tried }, (_, step) => from + ((to - from) * step) / (tried - 1));
  const places: Point[] = [
    ...along(edge, right).map((x): Point => [x, bottom]),
    ...along(edge, right).map((x): Point => [x, edge]),
    ...along(edge, bottom).map((y): Point => [edge, y]),
    ...along(edge, bottom).map((y): Point => [right, y]),
  ];
  const covered = ([left, top]: Point) => {
    let count = 0;
    for (let row = 0; row < lookedAt; row++)
      for (let column = 0; column < lookedAt; column++) {
        const at: Point = [left + (wide * column) / (lookedAt - 1), top + (high * row) / (lookedAt - 1)];
        if (others.some(({ rings }) => rings.some((ring) => containsPoint(ring, at)))) count++;
      }
    return count;
  };
  let best = places[0]!;
  let least = covered(best);
  for (const place of places) {
    if (least === 0) break;
    const count = covered(place);
    if (count < least) [best, least] = [place, count];
  }
  return best;
}
