import { expect, it } from 'vitest';
import type { Point } from '../../../science/geometry/point.ts';
import { groundLabelAt } from './groundLabelAt.ts';

const box = (left: number, top: number, right: number, bottom: number) => ({
  rings: [
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ] as readonly Point[],
  ],
});

it('stands at the bottom left, else along the edges where nothing is drawn', () => {
  expect(groundLabelAt([40, 10], [300, 400], [], 5)).toEqual([5, 385]);
  const [, top] = groundLabelAt([40, 10], [300, 400], [box(0, 100, 300, 400)], 5);
  expect(top).toBe(5);
  const [left] = groundLabelAt([40, 10], [300, 400], [box(0, 0, 100, 400)], 5);
  expect(left).toBeGreaterThan(100);
});
