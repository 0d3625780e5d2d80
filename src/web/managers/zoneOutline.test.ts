import { expect, it } from 'vitest';
import type { Point } from '../../science/geometry/point.ts';
import {
  middleAfter,
  movedOutline,
  nearestSide,
  onStone,
  withoutPoint,
  withPointAfter,
} from './zoneOutline.ts';

const stone: Point = [400, 300];
const post: readonly Point[] = [
  [380, 10],
  [395, 10],
  [395, 90],
  [380, 90],
];

it('keeps a place on the stone, in hundredths of a millimetre', () => {
  expect(onStone([-3, 300.004], stone)).toEqual([0, 300]);
  expect(onStone([12.3456, -0.001], stone)).toEqual([12.35, 0]);
});

it('moves an outline to the border and keeps its shape', () => {
  expect(movedOutline(post, [50, -20], stone)).toEqual([
    [385, 0],
    [400, 0],
    [400, 80],
    [385, 80],
  ]);
});

it('keeps the three points that enclose something', () => {
  const triangle = withoutPoint(post, 3);
  expect(triangle).toHaveLength(3);
  expect(withoutPoint(triangle, 0)).toBe(triangle);
});

it('adds a point on the side that closes the outline', () => {
  expect(middleAfter(post, 3)).toEqual([380, 50]);
  expect(withPointAfter(post, 3, [370, 50]).at(-1)).toEqual([370, 50]);
  expect(nearestSide(post, [378, 40])).toMatchObject({ after: 3, at: [380, 40], mm: 2 });
});
