import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildGreyPyramid } from '../../src/imaging/matching/greyPyramid.ts';
import { refineStretch } from '../../src/imaging/matching/refineStretch.ts';
import { register } from '../../src/imaging/matching/register.ts';
import { mapPoint } from '../../src/imaging/operations/mapPoint.ts';
import { sampleGrey } from '../../src/imaging/operations/sampleLinear.ts';
import type { Photograph } from '../../src/imaging/photograph.ts';
import type { PlaneMap } from '../../src/imaging/planeMap.ts';
import {
  applyHomography,
  composeHomographies,
  homographyFromPoints,
  invertHomography,
} from '../../src/science/geometry/homography.ts';
import type { Corners, Point } from '../../src/science/geometry/point.ts';
import { median } from '../../src/science/statistics/quantile.ts';
import { mirroredPhotograph, mirroredPlace, publishedPhotograph } from './mirroredPhotograph.ts';

interface View {
  readonly corners_px: readonly Point[];
  readonly H_mm_to_px: readonly (readonly number[])[];
  readonly rms_px: number;
}

/** See data/views/SOURCES.md. */
const views: Record<string, View> = JSON.parse(
  readFileSync(new URL('data/views/chess-corners.json', import.meta.url), 'utf8'),
).views;
const names = Object.keys(views);
/** Inner corners in sheet mm, in the order of `corners_px`. */
const cornersMm = Array.from({ length: 24 }, (_, i): Point => [30 * (i % 4), 30 * Math.floor(i / 4)]);
const viewOf = (name: string) => views[name]!;
const published = (name: string) => viewOf(name).H_mm_to_px.flat();
/** Pixel centres are whole numbers in the published places, and lie at + 0.5 here. */
const ours = ([x, y]: Point): Point => [x + 0.5, y + 0.5];
const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
const rootMeanSquare = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

/** Round the inner corners: all squares and a hand's breadth of nothing. */
const workMm = { left: -30, top: -30, width: 150, height: 210 };
const rectangle: Corners = [
  [0, 0],
  [workMm.width, 0],
  [workMm.width, workMm.height],
  [0, workMm.height],
];
const onSheet = ([x, y]: Point): Point => [x + workMm.left, y + workMm.top];

const photographs = new Map<string, Photograph>();
beforeAll(async () => {
  for (const name of names) photographs.set(name, await publishedPhotograph(`views/${name}`));
});

describe('homographies of the views', () => {
  test.each(names)('%s: fitted to its corners, and back', (name) => {
    const { corners_px: corners, rms_px: rms } = viewOf(name);
    const fitted = homographyFromPoints(cornersMm, corners)!;
    const off = corners.map((corner, i) => apart(applyHomography(fitted, cornersMm[i]!), corner));
    expect(rootMeanSquare(off)).toBeLessThanOrEqual(rms + 5e-4);
    const back = invertHomography(fitted)!;
    for (const place of cornersMm)
      expect(apart(applyHomography(back, applyHomography(fitted, place)), place)).toBeLessThan(1e-9);
    // The published map was fitted by another program: no farther off than the corners themselves.
    const between = cornersMm.map((place) =>
      apart(applyHomography(fitted, place), applyHomography(published(name), place)),
    );
    expect(median(between)).toBeLessThanOrEqual(rms);
  });

  test.each(names.slice(1))('first view to %s and back is no move at all', (name) => {
    const there = composeHomographies(published(name), invertHomography(published(names[0]!))!);
    const andBack = composeHomographies(published(names[0]!), invertHomography(published(name))!);
    const none = composeHomographies(andBack, there);
    for (const [i, value] of [1, 0, 0, 0, 1, 0, 0, 0, 1].entries()) expect(none[i]!).toBeCloseTo(value, 8);
    for (const [i, corner] of viewOf(names[0]!).corners_px.entries()) {
      const allowed = 3 * (viewOf(names[0]!).rms_px + viewOf(name).rms_px);
      expect(apart(applyHomography(there, corner), viewOf(name).corners_px[i]!)).toBeLessThan(allowed);
    }
  });
});

describe('rectified to millimetres', () => {
  const pxPerMm = 4;

  /** Where light turns to dark along a line of a raster: the place at which it passes the middle of its ends, mm. */
  function crossing(line: readonly number[]): number {
    const half = (line[0]! + line.at(-1)!) / 2;
    const rising = line.at(-1)! > line[0]!;
    const at = line.findIndex((value) => value > half === rising);
    const share = (half - line[at - 1]!) / (line[at]! - line[at - 1]!);
    return (at - 1 + share + 0.5) / pxPerMm;
  }

  test.each(names)('%s: every corner lies where the photograph has it', (name) => {
    const homography = homographyFromPoints(
      rectangle,
      rectangle.map((place) => ours(applyHomography(published(name), onSheet(place)))),
    )!;
    const map: PlaneMap = { homography, stretch: null };
    const raster = sampleGrey(photographs.get(name)!, map, {
      widthPx: workMm.width * pxPerMm,
      heightPx: workMm.height * pxPerMm,
      pxPerMm,
      originMm: [0, 0],
    });
    const reach = 8 * pxPerMm;
    const off = cornersMm.map(([xMm, yMm], i) => {
      const x = (xMm - workMm.left) * pxPerMm;
      const y = (yMm - workMm.top) * pxPerMm;
      const down = (dx: number) =>
        Array.from({ length: 2 * reach }, (_, k) => raster.data[(y + k - reach) * raster.widthPx + x + dx]!);
      const across = (dy: number) =>
        Array.from({ length: 2 * reach }, (_, k) => raster.data[(y + dy) * raster.widthPx + x + k - reach]!);
      // Edges are read a little way from the corner on both sides and averaged, since both turn round there.
      const foundX = (crossing(across(-16)) + crossing(across(16))) / 2 + (x - reach) / pxPerMm;
      const foundY = (crossing(down(-16)) + crossing(down(16))) / 2 + (y - reach) / pxPerMm;
      return apart(mapPoint(map, [foundX, foundY]), ours(viewOf(name).corners_px[i]!));
    });
    expect(median(off), 'median, px').toBeLessThanOrEqual(0.25);
  });
});

describe('one view laid onto another', () => {
  /** The published places, moved as far as a person's clicks are off: up to 3.6 mm. */
  const clickedOffMm: readonly Point[] = [
    [3, -2],
    [-3, 2],
    [2, 3],
    [-2, -3],
  ];
  const stoneCorners = () =>
    rectangle.map((place) =>
      mirroredPlace(photographs.get(names[0]!)!, ours(applyHomography(published(names[0]!), onSheet(place)))),
    ) as unknown as Corners;
  const proofCorners = (name: string) =>
    rectangle.map((place, i) =>
      ours(
        applyHomography(
          published(name),
          onSheet([place[0] + clickedOffMm[i]![0], place[1] + clickedOffMm[i]![1]]),
        ),
      ),
    ) as unknown as Corners;

  test.each(names.slice(1))('%s: the stretch brings every measured corner home', (name) => {
    const first = photographs.get(names[0]!)!;
    const stoneMap: PlaneMap = {
      homography: homographyFromPoints(rectangle, stoneCorners())!,
      stretch: null,
    };
    const refined = refineStretch(
      buildGreyPyramid(mirroredPhotograph(first)),
      stoneMap,
      buildGreyPyramid(photographs.get(name)!),
      homographyFromPoints(rectangle, proofCorners(name))!,
      [workMm.width, workMm.height],
      () => true,
    )!;
    const toMm = invertHomography(stoneMap.homography)!;
    const off = viewOf(names[0]!).corners_px.map((corner, i) => {
      const stoneMm = applyHomography(toMm, mirroredPlace(first, ours(corner)));
      return apart(mapPoint(refined.map, stoneMm), ours(viewOf(name).corners_px[i]!));
    });
    expect(median(off), 'median, px').toBeLessThanOrEqual(0.5);
    expect(Math.max(...off), 'worst, px').toBeLessThanOrEqual(1.5);
  });

  test('a board that looks the same turned and mirrored is refused, not guessed', () => {
    const result = register({
      stone: mirroredPhotograph(photographs.get(names[0]!)!),
      proof: photographs.get(names[1]!)!,
      sizeMm: [workMm.width, workMm.height],
      stoneCorners: stoneCorners(),
      proofCorners: proofCorners(names[1]!),
    });
    expect(result.ok && result.value.verdict).toBe('no-match');
  });
});
