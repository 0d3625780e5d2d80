import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../foundation/random.ts';
import {
  applyHomography,
  composeHomographies,
  homographyFromPoints,
  invertHomography,
  jacobianDeterminant,
} from './homography.ts';
import type { Point } from './point.ts';

const tilted = [4.9, 0.22, 270, 0.2, 4.8, 430, -1.1e-4, 6e-5, 1];

describe('homography', () => {
  it('is recovered exactly from four corners', () => {
    const from: Point[] = [
      [0, 0],
      [300, 0],
      [300, 400],
      [0, 400],
    ];
    const h = homographyFromPoints(
      from,
      from.map((point) => applyHomography(tilted, point)),
    )!;
    h.forEach((value, i) => {
      expect(value).toBeCloseTo(tilted[i]!, 8);
    });
  });

  it('is recovered from many noisy points, better than one point alone', () => {
    const random = seededRandom(4);
    const from: Point[] = Array.from({ length: 400 }, () => [random() * 300, random() * 400]);
    const to = from.map((point): Point => {
      const [x, y] = applyHomography(tilted, point);
      return [x + random() - 0.5, y + random() - 0.5];
    });
    const h = homographyFromPoints(from, to)!;
    const [x, y] = applyHomography(h, [150, 200]);
    const [trueX, trueY] = applyHomography(tilted, [150, 200]);
    expect(Math.hypot(x - trueX, y - trueY)).toBeLessThan(0.06);
  });

  it('goes there and back', () => {
    const back = invertHomography(tilted)!;
    composeHomographies(back, tilted).forEach((value, i) => {
      expect(value).toBeCloseTo(i % 4 === 0 ? 1 : 0, 9);
    });
  });

  it('refuses three points on a line and a singular matrix', () => {
    const line: Point[] = [
      [0, 0],
      [1, 1],
      [2, 2],
      [0, 5],
    ];
    expect(
      homographyFromPoints(line, [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ]),
    ).toBeNull();
    expect(invertHomography([1, 2, 3, 2, 4, 6, 0, 0, 1])).toBeNull();
  });

  it('tells a mirror by the sign of its area ratio', () => {
    expect(jacobianDeterminant([2, 0, 0, 0, 3, 0, 0, 0, 1], [5, 5])).toBeCloseTo(6, 12);
    expect(jacobianDeterminant([-2, 0, 900, 0, 3, 0, 0, 0, 1], [5, 5])).toBeCloseTo(-6, 12);
  });
});
