import type { Point } from '../../science/geometry/point.ts';

interface CellFrame {
  readonly columns: number;
  readonly rows: number;
  readonly cellsPerMm: number;
  readonly originMm: Point;
}

/**
 * Walks the cells whose centres lie inside a polygon (even-odd rule), row by row:
 * `visit` gets the row and the half-open range of columns. Points are stone mm.
 */
export function rowSpans(
  polygonMm: readonly Point[],
  frame: CellFrame,
  visit: (row: number, from: number, to: number) => void,
): void {
  const ys = polygonMm.map((point) => (point[1] - frame.originMm[1]) * frame.cellsPerMm);
  const first = Math.max(0, Math.floor(Math.min(...ys)));
  const last = Math.min(frame.rows - 1, Math.ceil(Math.max(...ys)));
  for (let row = first; row <= last; row++) {
    const yMm = (row + 0.5) / frame.cellsPerMm + frame.originMm[1];
    const crossings: number[] = [];
    polygonMm.forEach((a, i) => {
      const b = polygonMm[(i + 1) % polygonMm.length]!;
      if (a[1] <= yMm === b[1] <= yMm) return;
      crossings.push(a[0] + ((yMm - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
    });
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(0, Math.ceil((crossings[i]! - frame.originMm[0]) * frame.cellsPerMm - 0.5));
      const to = Math.min(
        frame.columns,
        Math.ceil((crossings[i + 1]! - frame.originMm[0]) * frame.cellsPerMm - 0.5),
      );
      if (to > from) visit(row, from, to);
    }
  }
}
