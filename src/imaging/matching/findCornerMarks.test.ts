import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../foundation/random.ts';
import {
  applyHomography,
  homographyFromPoints,
  invertHomography,
} from '../../science/geometry/homography.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import { findCornerMarks } from './findCornerMarks.ts';

const sizeMm: Point = [300, 400];
const rectangle: Corners = [
  [0, 0],
  [300, 0],
  [300, 400],
  [0, 400],
];
/** A stone photographed a little askew. */
const cornersPx: Corners = [
  [210.3, 180.6],
  [981.7, 205.2],
  [1020.4, 1240.8],
  [176.2, 1221.5],
];

/** Whether a place, in mm inwards from its corner, lies on the mark; the top left one may carry a letter. */
type Mark = (inX: number, inY: number, first: boolean) => boolean;

/** Drawn strokes, 9 mm long and 0.9 mm wide, their outer corner on the rectangle's; the first has the third arm of an F. */
const drawn: Mark = (x, y, first) =>
  (x >= 0 && y >= 0 && x <= 9 && y <= 9 && (x <= 0.9 || y <= 0.9)) ||
  (first && x >= 0 && x <= 5.5 && y >= 4.2 && y <= 5.1);

/** Broad angles cut from the protocol sheet, laid round the rectangle. */
const laidRound: Mark = (x, y) => x >= -10 && y >= -10 && x <= 14 && y <= 14 && (x <= 0 || y <= 0);

function isNearCorner(x: number, y: number): boolean {
  return cornersPx.some(([cornerX, cornerY]) => Math.hypot(x - cornerX, y - cornerY) < 70);
}

function photograph(mark: Mark, turned = 0, speckled = false): Photograph {
  const [widthPx, heightPx] = [1200, 1400];
  const toMm = invertHomography(homographyFromPoints(rectangle, cornersPx)!)!;
  const random = seededRandom(7);
  const codes = new Uint8Array(widthPx * heightPx);
  const share = (px: number, py: number) => {
    const [x, y] = applyHomography(toMm, [px, py]);
    const [inX, inY] = [Math.min(x, 300 - x), Math.min(y, 400 - y)];
    const corner = x < 150 ? (y < 200 ? 0 : 3) : y < 200 ? 1 : 2;
    return mark(inX, inY, corner === turned) ? 1 : 0;
  };
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      let dark = 0;
      if (!isNearCorner(x, y)) {
        codes[y * widthPx + x] = Math.round(200 + (random() - 0.5) * 6);
        continue;
      }
      for (const dy of [0.125, 0.375, 0.625, 0.875])
        for (const dx of [0.125, 0.375, 0.625, 0.875]) dark += share(x + dx, y + dy) / 16;
      codes[y * widthPx + x] = Math.round(200 - 160 * dark + (random() - 0.5) * 6);
    }
  }
  if (speckled) {
    for (let i = 0; i < 300; i++) {
      const [left, top] = [Math.floor(random() * 1150), Math.floor(random() * 1350)];
      const [wide, high] = [3 + Math.floor(random() * 30), 3 + Math.floor(random() * 30)];
      for (let y = top; y < top + high; y++)
        for (let x = left; x < left + wide; x++) codes[y * widthPx + x] = 40;
    }
  }
  const toLinear = Float32Array.from({ length: 256 }, (_, code) => code / 255);
  return { widthPx, heightPx, channels: 1, codes, toLinear };
}

function worstPx(found: Corners, expected: Corners): number {
  return Math.max(...found.map(([x, y], i) => Math.hypot(x - expected[i]![0], y - expected[i]![1])));
}

describe('findCornerMarks', () => {
  it('finds drawn strokes to a fraction of a pixel, by their outer corner', () => {
    const found = findCornerMarks(photograph(drawn), sizeMm);
    expect(worstPx(found!.corners, cornersPx)).toBeLessThan(0.5);
    expect(found!.sure).toBeGreaterThan(0.7);
  });

  it('finds broad angles laid round the rectangle, by their inner corner', () => {
    const found = findCornerMarks(photograph(laidRound), sizeMm);
    expect(worstPx(found!.corners, cornersPx)).toBeLessThan(0.5);
  });

  it('begins at the mark with the F', () => {
    const found = findCornerMarks(photograph(drawn, 2));
    const [a, b, c, d] = cornersPx;
    expect(worstPx(found!.corners, [c, d, a, b])).toBeLessThan(0.5);
    expect(found!.letter).toBe(true);
    expect(findCornerMarks(photograph(drawn, -1))!.letter).toBe(false);
  });

  it('does not offer marks of another shape', () => {
    expect(findCornerMarks(photograph(drawn), [300, 300])).toBeNull();
  });

  it('finds none among blots', () => {
    const blots = photograph(() => false, 0, true);
    expect(findCornerMarks(blots, sizeMm)?.sure ?? 0).toBeLessThan(0.7);
  });
});
