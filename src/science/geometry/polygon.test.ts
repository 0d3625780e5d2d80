import { describe, expect, it } from 'vitest';
import type { Point } from './point.ts';
import {
  centroid,
  containsPoint,
  convexHull,
  crossesItself,
  distanceToOutline,
  isConvex,
  offsetPolygon,
  segmentsMeet,
  signedArea,
} from './polygon.ts';

const rectangle: Point[] = [
  [10, 20],
  [40, 20],
  [40, 60],
  [10, 60],
];
const bowTie: Point[] = [
  [0, 0],
  [10, 10],
  [10, 0],
  [0, 10],
];
const hook: Point[] = [
  [0, 0],
  [20, 0],
  [20, 5],
  [5, 5],
  [5, 20],
  [0, 20],
];

describe('polygon', () => {
  it('has a signed area, clockwise positive with y down', () => {
    expect(signedArea(rectangle)).toBe(1200);
    expect(signedArea([...rectangle].reverse())).toBe(-1200);
  });

  it('has its centroid where the area balances', () => {
    expect(centroid(rectangle)).toEqual([25, 40]);
    const [x, y] = centroid(hook);
    expect(x).toBeCloseTo((100 * 10 + 75 * 2.5) / 175, 12);
    expect(y).toBeCloseTo((100 * 2.5 + 75 * 12.5) / 175, 12);
  });

  it('contains what is inside only', () => {
    expect(containsPoint(hook, [2, 18])).toBe(true);
    expect(containsPoint(hook, [10, 10])).toBe(false);
  });

  it('tells segments that meet: crossing, touching by an end, lying on each other, not where only their lines do', () => {
    const meet = (c: Point, d: Point) => {
      const found = segmentsMeet([0, 0], [10, 0], c, d);
      expect(segmentsMeet(c, d, [0, 0], [10, 0])).toBe(found);
      expect(segmentsMeet([10, 0], [0, 0], d, c)).toBe(found);
      return found;
    };
    expect(meet([5, -1], [5, 1])).toBe(true);
    expect(meet([10, 0], [12, 5])).toBe(true);
    expect(meet([4, 0], [4, 7])).toBe(true);
    expect(meet([8, 0], [20, 0])).toBe(true);
    expect(meet([11, 0], [20, 0])).toBe(false);
    expect(meet([11, -1], [11, 1])).toBe(false);
    expect(meet([0, 1], [10, 1])).toBe(false);
  });

  it('finds crossings and folds', () => {
    expect(crossesItself(bowTie)).toBe(true);
    expect(crossesItself(hook)).toBe(false);
    expect(
      crossesItself([
        [0, 0],
        [10, 0],
        [5, 0],
        [5, 5],
      ]),
    ).toBe(true);
  });

  it('knows convex from not', () => {
    expect(isConvex(rectangle)).toBe(true);
    expect(isConvex(hook)).toBe(false);
    expect(isConvex(bowTie)).toBe(false);
    expect(
      isConvex([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toBe(false);
  });

  it('wraps points in a hull that runs clockwise', () => {
    const hull = convexHull([...rectangle, [25, 40], [25, 20]]);
    expect(hull).toHaveLength(4);
    expect(signedArea(hull)).toBe(1200);
  });

  it('moves the outline out and in, whichever way it runs', () => {
    expect(signedArea(offsetPolygon(rectangle, 5))).toBeCloseTo(40 * 50, 9);
    expect(signedArea(offsetPolygon(rectangle, -5))).toBeCloseTo(20 * 30, 9);
    expect(signedArea(offsetPolygon([...rectangle].reverse(), 5))).toBeCloseTo(-40 * 50, 9);
  });

  it('measures the distance to the nearest side', () => {
    expect(distanceToOutline(rectangle, [25, 25])).toBe(5);
    expect(distanceToOutline(rectangle, [43, 64])).toBe(5);
  });
});
