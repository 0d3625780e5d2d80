import { expect, test } from 'vitest';
import { adjugate3, apply3, determinant3, invert3, type Matrix3, multiply3 } from './matrix3.ts';

const turned: Matrix3 = [2, -1, 3, 0, 4, 1, -5, 2, 6];
const sheared: Matrix3 = [1, 7, 0, 0, 1, 0, 3, 0, 1];
const unit: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];
const near = (found: Matrix3, wanted: Matrix3) => {
  for (const [i, value] of wanted.entries()) expect(found[i], `entry ${i}`).toBeCloseTo(value, 12);
};

// Marks that follow by algebra.
test('a matrix times its inverse is the unit matrix, either way round', () => {
  near(multiply3(turned, invert3(turned)), unit);
  near(multiply3(invert3(turned), turned), unit);
  expect(invert3([1, 2, 3, 2, 4, 6, 0, 1, 1]).every(Number.isFinite)).toBe(false);
});

test('a product does its right side first', () => {
  const column = [1, -2, 5] as const;
  near(apply3(multiply3(turned, sheared), column), apply3(turned, apply3(sheared, column)));
  expect(apply3(multiply3(sheared, turned), column)).not.toEqual(apply3(multiply3(turned, sheared), column));
});

test('determinants multiply; one by hand; and of a singular matrix it is 0 where the adjugate stays finite', () => {
  // 2·(4·6 − 1·2) + 1·(0·6 + 1·5) + 3·(0·2 + 4·5) = 44 + 5 + 60
  expect(determinant3(turned)).toBe(109);
  expect(determinant3(multiply3(turned, sheared))).toBeCloseTo(109 * determinant3(sheared), 10);
  const singular: Matrix3 = [1, 2, 3, 2, 4, 6, 0, 1, 1];
  expect(determinant3(singular)).toBe(0);
  expect(adjugate3(singular)).toEqual([-2, 1, 0, -2, 1, 0, 2, -1, 0]);
});
