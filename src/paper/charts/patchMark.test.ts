import { expect, it } from 'vitest';
import { patchMark } from './patchMark.ts';

const signs = (id: string, row: number, column: number) => patchMark({ id, row, column })!.path;

it('counts rows by strokes and places by points, five at a time', () => {
  const one = signs('row 2, third', 2, 3);
  expect(one.match(/V9/g)).toHaveLength(2);
  expect(one.match(/a0\.7/g)).toHaveLength(6);
  const many = signs('G11', 7, 11);
  expect(many.match(/V9/g)).toHaveLength(3);
  expect(many.match(/a2\.4/g)).toHaveLength(4);
  expect(many.match(/a0\.7/g)).toHaveLength(2);
  expect(signs('A1.2', 1, 1).match(/9H/g)).toHaveLength(2);
});

it('no two places of a stone have one mark, and none reaches out of its box', () => {
  const marks = new Set<string>();
  for (let row = 1; row <= 12; row++)
    for (let column = 1; column <= 12; column++) {
      const { path, width } = patchMark({ id: `row ${row}, x`, row, column })!;
      marks.add(path);
      for (const [, x] of path.matchAll(/M([\d.]+)/g)) expect(Number(x)).toBeLessThan(width);
    }
  expect(marks.size).toBe(144);
});

it('has none for a patch in no row, or with a name of its own', () => {
  expect(patchMark({ id: '1', row: null, column: null })).toBeNull();
  expect(patchMark({ id: 'corner', row: 1, column: 1 })).toBeNull();
});
