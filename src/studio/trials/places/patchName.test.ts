import { expect, it } from 'vitest';
import { patchName, patchNames, squareName } from './patchName.ts';

const at = (id: string, row: number | null, column: number | null) => ({ id, row, column });

it('names a square by its row and its place in it', () => {
  expect([1, 3, 12, 13, 21, 22, 33, 111].map((place) => squareName(2, place))).toEqual([
    'row 2, first',
    'row 2, third',
    'row 2, twelfth',
    'row 2, 13th',
    'row 2, 21st',
    'row 2, 22nd',
    'row 2, 33rd',
    'row 2, 111th',
  ]);
  expect(squareName(1, 2, 3)).toBe('row 1, second, step 3');
});

it('tells squares that were named otherwise by their place too, and what a person named by that name', () => {
  expect(patchName(at('B3', 2, 3))).toBe('row 2, third');
  expect(patchName(at('B3.2', 2, 3))).toBe('row 2, third, step 2');
  expect(patchName(at('2B5', 3, 1))).toBe('row 3, first');
  expect(patchName(at('row 2, third, step 2', 2, 3))).toBe('row 2, third, step 2');
  expect(patchName(at('B3', null, null))).toBe('B3');
  expect(patchName(at('crayon corner', 1, 1))).toBe('crayon corner');
});

it('tells neighbours of one row as from one to another, and only the first dozen', () => {
  const row = (n: number, places: readonly number[]) =>
    places.map((place) => at(squareName(n, place), n, place));
  expect(patchNames([...row(1, [1, 2, 3, 5]), ...row(2, [1])])).toBe(
    'row 1, first to third; row 1, fifth; row 2, first',
  );
  expect(patchNames([at('A1.1', 1, 1), at('A1.2', 1, 1), at('7', null, null)])).toBe(
    'row 1, first, step 1; row 1, first, step 2; 7',
  );
  const apart = Array.from({ length: 14 }, (_, index) => row(index + 1, [1, 2])).flat();
  expect(patchNames(apart)).toMatch(/; row 12, first to second and 4 more$/);
});
