import { expect, test } from 'vitest';
import type { Point } from './point.ts';
import { containsPoint } from './polygon.ts';
import { roomAt, roomiestPoint } from './roomiestPoint.ts';

const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

test('in a square it is the centre, in a right triangle the centre of its inscribed circle', () => {
  const square = roomiestPoint({ rings: [box(10, 20, 40, 40)], without: [] }, 0.01)!;
  expect(square.point).toEqual([30, 40]);
  expect(square.radius).toBe(20);
  // Sides 30, 40, 50: the inscribed circle has radius (30 + 40 − 50) / 2 = 10.
  const triangle = roomiestPoint(
    {
      rings: [
        [
          [0, 0],
          [40, 0],
          [0, 30],
        ],
      ],
      without: [],
    },
    0.01,
  )!;
  expect(triangle.radius).toBeGreaterThan(9.98);
  expect(triangle.radius).toBeLessThanOrEqual(10 + 1e-9);
  expect(Math.hypot(triangle.point[0] - 10, triangle.point[1] - 10)).toBeLessThan(0.1);
});

test('in a crescent it lies inside, where the centre of area does not', () => {
  const crescent: Point[] = [
    ...box(0, 0, 100, 100).slice(0, 2),
    [100, 10],
    [10, 10],
    [10, 90],
    [100, 90],
    [100, 100],
    [0, 100],
  ];
  const found = roomiestPoint({ rings: [crescent], without: [] }, 0.1)!;
  expect(containsPoint(crescent, found.point)).toBe(true);
  expect(found.radius).toBeGreaterThan(4.9);
});

test('holes and covered parts are kept out of', () => {
  const withHole = roomiestPoint({ rings: [box(0, 0, 100, 40), box(30, 5, 40, 30)], without: [] }, 0.1)!;
  expect(withHole.radius).toBeGreaterThan(14.9);
  expect(withHole.point[0] < 30 || withHole.point[0] > 70).toBe(true);
  const covered = roomiestPoint({ rings: [box(0, 0, 100, 40)], without: [box(0, 0, 60, 40)] }, 0.1)!;
  expect(covered.point[0]).toBeGreaterThan(60);
});

test('nothing to stand in gives null', () => {
  expect(roomiestPoint({ rings: [], without: [] }, 1)).toBeNull();
  expect(roomiestPoint({ rings: [box(0, 0, 10, 10)], without: [box(-1, -1, 12, 12)] }, 1)).toBeNull();
  expect(
    roomiestPoint(
      {
        rings: [
          [
            [0, 0],
            [5, 0],
            [9, 0],
          ],
        ],
        without: [],
      },
      1,
    ),
  ).toBeNull();
});

test('room at a point is its distance to the nearest edge, of what is cut out too, negative where it is not inside', () => {
  const place = { rings: [box(0, 0, 100, 60)], without: [box(40, 20, 20, 20)] };
  expect(roomAt(place, [10, 30])).toBe(10);
  expect(roomAt(place, [35, 30])).toBe(5);
  expect(roomAt(place, [50, 30])).toBe(-10);
  expect(roomAt(place, [103, 64])).toBe(-5);
  expect(roomAt({ rings: [], without: [] }, [0, 0])).toBe(-Infinity);
});
