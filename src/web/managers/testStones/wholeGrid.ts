import type { PatchGrid } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';

/** A grid that fills a rectangle: gutters of a fifth of a square, a border of one gutter. */
export function wholeGrid([width, height]: Point, rows: number, columns: number): PatchGrid {
  const side = (extent: number, count: number) => extent / (count + 0.2 * (count + 1));
  const [squareWidth, squareHeight] = [side(width, columns), side(height, rows)];
  const round = (value: number) => Math.floor(value * 10) / 10;
  return {
    rows,
    columns,
    originMm: [round(0.2 * squareWidth), round(0.2 * squareHeight)],
    squareMm: [round(squareWidth), round(squareHeight)],
    gutterMm: [round(0.2 * squareWidth), round(0.2 * squareHeight)],
    turnDegrees: 0,
    steps: 1,
  };
}
