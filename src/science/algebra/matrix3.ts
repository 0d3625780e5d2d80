/** A row-major 3×3 matrix; all that is done with it here is so by definition. */
export type Matrix3 = readonly number[];

/** The product `left · right`. */
export function multiply3(left: Matrix3, right: Matrix3): Matrix3 {
  return Array.from({ length: 9 }, (_, index) => {
    const row = Math.floor(index / 3) * 3;
    const column = index % 3;
    return (
      left[row]! * right[column]! + left[row + 1]! * right[column + 3]! + left[row + 2]! * right[column + 6]!
    );
  });
}

/** The inverse times the determinant: finite for every finite matrix, singular ones too. */
export function adjugate3(m: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, i] = m as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}

/** The determinant, by the first row. */
export function determinant3(m: Matrix3): number {
  const adjugate = adjugate3(m);
  return m[0]! * adjugate[0]! + m[1]! * adjugate[3]! + m[2]! * adjugate[6]!;
}

/** The inverse; entries are not finite when the matrix is singular. */
export function invert3(m: Matrix3): Matrix3 {
  const determinant = determinant3(m);
  return adjugate3(m).map((value) => value / determinant);
}

/** The product of a matrix and a column. */
export function apply3(m: Matrix3, [x, y, z]: readonly [number, number, number]): [number, number, number] {
  return [
    m[0]! * x + m[1]! * y + m[2]! * z,
    m[3]! * x + m[4]! * y + m[5]! * z,
    m[6]! * x + m[7]! * y + m[8]! * z,
  ];
}
