import type { Corners, Point } from '../../science/geometry/point.ts';

/**
 * The CSS `matrix3d(…)` that lays a photograph so that its four marks fall on the corners of a rectangle of `boxPx`
 * (TL, TR, BR, BL), with transform-origin at the top left. `corners` and the laid picture share one px scale.
 * A projective map from four pairs of points, solved exactly (Heckbert 1989, Fundamentals of Texture Mapping, §2.2.3).
 * Returns null where the marks lie on one line.
 */
export function straightening(corners: Corners, boxPx: Point): string | null {
  const target: Corners = [
    [0, 0],
    [boxPx[0], 0],
    [boxPx[0], boxPx[1]],
    [0, boxPx[1]],
  ];
  const h = projective(corners, target);
  return h && matrix3d(h);
}

/** The eight numbers of a projective map in the plane as CSS has it. */
export function matrix3d(map: readonly number[]): string {
  const [a, b, c, d, e, f, g, k] = map as [number, number, number, number, number, number, number, number];
  const columns = [a, d, 0, g, b, e, 0, k, 0, 0, 1, 0, c, f, 0, 1];
  return `matrix3d(${columns.map((value) => Number(value.toPrecision(9))).join(',')})`;
}

/** The eight numbers of the projective map that takes `from` to `to`; null where there is none. */
export function projective(from: Corners, to: Corners): readonly number[] | null {
  const rows: number[][] = from.flatMap(([x, y], i) => {
    const [u, v] = to[i]!;
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  for (let column = 0; column < 8; column++) {
    const pivot =
      rows
        .slice(column)
        .reduce(
          (best, row, at) => (Math.abs(row[column]!) > Math.abs(rows[best + column]![column]!) ? at : best),
          0,
        ) + column;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const head = rows[column]![column]!;
    if (Math.abs(head) < 1e-9) return null;
    for (const row of rows) {
      if (row === rows[column]) continue;
      const share = row[column]! / head;
      for (let at = column; at < 9; at++) row[at]! -= share * rows[column]![at]!;
    }
  }
  return rows.map((row, at) => row[8]! / row[at]!);
}
