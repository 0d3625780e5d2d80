import { beforeAll, describe, expect, test } from 'vitest';
import { type Registered, register } from '../../src/imaging/matching/register.ts';
import type { Photograph } from '../../src/imaging/photograph.ts';
import { applyHomography, type Homography, invertHomography } from '../../src/science/geometry/homography.ts';
import type { Corners, Point } from '../../src/science/geometry/point.ts';
import { quantile } from '../../src/science/statistics/quantile.ts';
import { mirroredPhotograph, mirroredPlace, publishedPhotograph } from './mirroredPhotograph.ts';
import { allNear, publishedRows } from './rows.ts';

/** Mikolajczyk & Schmid 2005 (doi 10.1109/TPAMI.2005.188), sequence "graf", view 1 to view 3; see data/wall/SOURCES.md. */
const rows = publishedRows('wall/homography-1-to-3.json');
const published = (rows[0]!.expected as { H: number[][] }).H.flat();
const backwards = invertHomography(published)!;

/** Pixel centres are whole numbers in the published matrix, and lie at + 0.5 here. */
const carry = (homography: Homography, [x, y]: Point): Point => {
  const [u, v] = applyHomography(homography, [x - 0.5, y - 0.5]);
  return [u + 0.5, v + 0.5];
};

/** What a person clicks is some 10 px off: 2 mm on a wall taken to be 150 mm wide. */
const clickedOff: readonly Point[] = [
  [8, -5],
  [-4, 8],
  [6, 6],
  [-8, -2],
];

/** The bound that the published homography is held to, px, median over the samples. */
const bound = 1;

let first: Photograph;
let third: Photograph;
beforeAll(async () => {
  first = await publishedPhotograph('wall/wall-1.jpg');
  third = await publishedPhotograph('wall/wall-3.jpg');
});

/** Registers `proof` to `stone`, of which the given rectangle of the view before mirroring is the work rectangle. */
function registered(
  stone: Photograph,
  proof: Photograph,
  homography: Homography,
  rectangle: readonly [left: number, top: number, right: number, bottom: number],
) {
  const [left, top, right, bottom] = rectangle;
  const seen: Corners = [
    [right, top],
    [left, top],
    [left, bottom],
    [right, bottom],
  ];
  const sizeMm: Point = [150, (150 * (bottom - top)) / (right - left)];
  const guess = seen.map((corner, i) => {
    const [x, y] = carry(homography, corner);
    return [x + clickedOff[i]![0], y + clickedOff[i]![1]] as const;
  });
  const result = register({
    stone: mirroredPhotograph(stone),
    proof,
    sizeMm,
    stoneCorners: seen.map((corner) => mirroredPlace(stone, corner)) as unknown as Corners,
    proofCorners: guess as unknown as Corners,
  });
  if (!result.ok || result.value.verdict !== 'ok') throw new Error(JSON.stringify(result));
  return result.value;
}

function offPx(found: Registered, stone: Photograph, homography: Homography): number[] {
  return found.samples.map(({ stonePx, proofPx }) => {
    const [x, y] = carry(homography, mirroredPlace(stone, stonePx));
    return Math.hypot(proofPx[0] - x, proofPx[1] - y);
  });
}

describe('the photographed wall, mirrored to stand in for a stone, against its published homography', () => {
  test('the matrix carries the published points, both ways', () => {
    const row = rows.find(({ id }) => id === 'h1to3p-points')!;
    const from = row.inputs.points as Point[];
    const to = (row.expected as { graf3_xy: Point[] }).graf3_xy;
    allNear(
      row,
      from.map((point) => [...applyHomography(published, point)]),
      to,
    );
    allNear(
      row,
      to.map((point) => [...applyHomography(backwards, point)]),
      from,
    );
  });

  test('view 3 onto view 1', () => {
    const found = registered(first, third, published, [60, 110, 740, 600]);
    const off = offPx(found, first, published);
    expect(off.length).toBeGreaterThan(600);
    expect(quantile(off, 0.5), 'median, px').toBeLessThanOrEqual(bound);
    expect(quantile(off, 0.9), 'nine in ten, px').toBeLessThanOrEqual(2 * bound);
    expect(found.turn).toBe(0);
  });

  test('view 1 onto view 3', () => {
    const found = registered(third, first, backwards, [120, 100, 600, 540]);
    const off = offPx(found, third, backwards);
    // The wall is no sheet: what passes for its outline leaves a corner out.
    expect(off.length).toBeGreaterThan(400);
    expect(quantile(off, 0.5), 'median, px').toBeLessThanOrEqual(bound);
    expect(quantile(off, 0.9), 'nine in ten, px').toBeLessThanOrEqual(2 * bound);
  });

  test('not mirrored, it is named so and not measured', () => {
    const corners: Corners = [
      [60, 110],
      [740, 110],
      [740, 600],
      [60, 600],
    ];
    const result = register({
      stone: first,
      proof: third,
      sizeMm: [150, 108],
      stoneCorners: corners,
      proofCorners: corners.map((corner) => carry(published, corner)) as unknown as Corners,
    });
    expect(result.ok && result.value.verdict).toBe('unmirrored');
  });
});
