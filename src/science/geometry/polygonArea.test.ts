import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../foundation/random.ts';
import type { Point } from './point.ts';
import { distanceToOutline } from './polygon.ts';
import { outlineDistance, sharedArea, unionArea } from './polygonArea.ts';

const square = (x: number, y: number, side: number): Point[] => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];

function star(x: number, y: number, radius: number, points: number, turn: number): Point[] {
  return Array.from({ length: points }, (_, index) => {
    const angle = (2 * Math.PI * index) / points + turn;
    const reach = radius * (0.8 + 0.2 * Math.sin(5 * angle));
    return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
  });
}

describe('the distance between two outlines', () => {
  it.each<readonly [string, Point[], Point[], number]>([
    ['beside each other', square(0, 0, 10), square(13, 0, 10), 3],
    ['corner to corner', square(0, 0, 10), square(13, 14, 10), 5],
    ['touching along an edge', square(0, 0, 10), square(10, 0, 10), 0],
    ['touching at a corner', square(0, 0, 10), square(10, 10, 10), 0],
    ['crossing', square(0, 0, 10), square(5, 5, 10), 0],
    ['the same twice', square(0, 0, 10), square(0, 0, 10), 0],
    ['one inside the other', square(0, 0, 30), square(10, 10, 5), 0],
  ])('%s', (_, a, b, distance) => {
    expect(outlineDistance(a, b)).toBeCloseTo(distance, 12);
    expect(outlineDistance(b, a)).toBeCloseTo(distance, 12);
    expect(outlineDistance(a, b, 4)).toBe(distance < 4 ? distance : Number.POSITIVE_INFINITY);
  });

  it('is what the points of either say, where they lie apart', () => {
    const seed = 20261125;
    const random = seededRandom(seed);
    for (let round = 0; round < 200; round++) {
      const a = star(0, 0, 10, 40, random());
      const b = star(25 * random(), 25 * random(), 4 + 6 * random(), 30, random());
      const found = outlineDistance(a, b);
      const apart = sharedArea(a, b) === 0;
      const byPoints = Math.min(
        ...a.map((point) => distanceToOutline(b, point)),
        ...b.map((point) => distanceToOutline(a, point)),
      );
      expect(found, `seed ${seed}, round ${round}`).toBeCloseTo(apart ? byPoints : 0, 9);
      expect(outlineDistance(a, b, 2)).toBe(found < 2 ? found : Number.POSITIVE_INFINITY);
    }
  });

  it('of outlines of thousands of points is found at once', () => {
    const begun = performance.now();
    expect(outlineDistance(star(0, 0, 100, 2000, 0), star(300, 0, 100, 2000, 0))).toBeGreaterThan(50);
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});

it('areas covered together count once, and what two share is what they have too much alone', () => {
  const [a, b] = [square(0, 0, 10), square(5, 5, 10)];
  expect(sharedArea(a, b)).toBeCloseTo(25, 12);
  expect(unionArea([a, b])).toBeCloseTo(175, 12);
  expect(unionArea([])).toBe(0);
});
