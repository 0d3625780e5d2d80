import { expect, it } from 'vitest';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { layPhotograph, markedPlace } from './photographPlane.ts';

const px: Corners = [
  [500, 400],
  [4500, 380],
  [4520, 3400],
  [480, 3420],
];
const stone: Point = [400, 300];

it('lays marks of the rectangle where the rectangle lies, and nothing without one', () => {
  const rectangle = { offsetMm: [30, 40], sizeMm: [340, 220] } as const;
  expect(markedPlace({ of: 'rectangle', px }, stone, rectangle)!.mm[2]).toEqual([370, 260]);
  expect(markedPlace({ of: 'rectangle', px }, stone, null)).toBeNull();
  expect(markedPlace({ of: 'stone', px }, stone, rectangle)!.mm[2]).toEqual([400, 300]);
});

it('shows few tiles of the whole stone, and sharp ones of what is near', () => {
  const marked = markedPlace({ of: 'stone', px }, stone, null)!;
  const whole = layPhotograph([5000, 3800], marked, { pxPerMm: 1.5, offsetPx: [0, 0] }, [600, 450])!;
  expect(whole.tiles.length).toBeLessThan(12);
  const near = layPhotograph([5000, 3800], marked, { pxPerMm: 12, offsetPx: [-1000, -800] }, [600, 450])!;
  const sharpest = Math.max(...near.tiles.map(({ level }) => level));
  expect(sharpest).toBe(13);
  expect(near.tiles.length).toBeLessThan(12);
  expect(near.transform).toMatch(/^matrix3d\(/);
});

it('lays nothing where the marks lie on one line', () => {
  const flat = px.map(([x]) => [x, 10]) as unknown as Corners;
  const marked = markedPlace({ of: 'stone', px: flat }, stone, null)!;
  expect(layPhotograph([5000, 3800], marked, { pxPerMm: 1, offsetPx: [0, 0] }, [400, 300])).toBeNull();
});
