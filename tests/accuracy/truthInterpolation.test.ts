import { describe, expect, it } from 'vitest';
import { truthField } from '../../bench/truthInterpolation.ts';
import { camera } from '../../src/sample/render/camera.ts';
import { sheetMap } from '../../src/sample/render/dampStretch.ts';
import { testSheet } from '../../src/sample/render/layouts/testSheet.ts';
import { plainCase } from '../../src/sample/render/pairCase.ts';
import type { Point } from '../../src/science/geometry/point.ts';

describe('the interpolated truth', () => {
  const { stone, print } = plainCase('x', 1, testSheet(1));
  const pose = { widthPx: 2600, heightPx: 3464, pxPerMm: 6, centreMm: [150, 200] as Point };
  const stoneCamera = camera({ ...pose, ...stone });
  const printCamera = camera({ ...pose, ...print });
  const sheet = sheetMap({ growth: [0.006, 0.011], unevenMm: 0.9, seed: 3 }, [300, 400], true);
  const sample = (stoneMm: Point) => ({
    stoneMm,
    stonePx: stoneCamera.toPx(stoneMm),
    proofPx: printCamera.toPx(sheet.toSheetMm(stoneMm)),
    onSheet: true,
  });
  // 25 a side is what pairs from elsewhere carry.
  const grid = Array.from({ length: 625 }, (_, i) =>
    sample([(i % 25) * 12.5, Math.floor(i / 25) * (400 / 24)]),
  );
  const field = truthField(grid);

  it.each([
    [3, 5],
    [151.3, 207.7],
    [297, 398.5],
    [6, 390],
    [81.7, 123.4],
  ])('agrees with the cameras at (%f, %f) mm to a thousandth of a millimetre', (x, y) => {
    const exact = sample([x, y]);
    const found = field.proofOf(exact.stonePx)!;
    const errorPx = Math.hypot(found.proofPx[0] - exact.proofPx[0], found.proofPx[1] - exact.proofPx[1]);
    expect(errorPx / found.pxPerMm).toBeLessThan(0.001);
    expect(found.pxPerMm).toBeGreaterThan(5.5);
  });

  it('says nothing far outside the rectangle', () => {
    expect(field.proofOf([10, 10])).toBeNull();
  });
});
