import { describe, expect, it } from 'vitest';
import type { PlaneMap, Stretch } from '../planeMap.ts';
import type { Frame } from '../raster.ts';
import { mapPoint, photographPxPerFramePx, rowMapper, stretchAt } from './mapPoint.ts';

function stretchOf(dx: (x: number, y: number) => number, dy: (x: number, y: number) => number): Stretch {
  const columns = 9;
  const rows = 7;
  const dxMm = new Float32Array(columns * rows);
  const dyMm = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      dxMm[row * columns + column] = dx(column * 20 - 20, row * 20 - 20);
      dyMm[row * columns + column] = dy(column * 20 - 20, row * 20 - 20);
    }
  }
  return { columns, rows, stepMm: 20, originMm: [-20, -20], dxMm, dyMm };
}

const homography = [4.9, 0.22, 270, 0.2, 4.8, 430, -1.1e-4, 6e-5, 1];

describe('mapPoint', () => {
  it('keeps a straight stretch straight inside the grid and beyond it', () => {
    const stretch = stretchOf(
      (x, y) => 0.25 + 0.01 * x - 0.004 * y,
      (x) => -0.5 + 0.002 * x,
    );
    for (const place of [
      [3.3, 41],
      [-50, -33],
      [200, 170],
      [140, 100],
    ] as const) {
      const [dx, dy] = stretchAt(stretch, place);
      expect(dx).toBeCloseTo(0.25 + 0.01 * place[0] - 0.004 * place[1], 5);
      expect(dy).toBeCloseTo(-0.5 + 0.002 * place[0], 5);
    }
  });

  it('passes through the nodes', () => {
    const stretch = stretchOf(
      (x, y) => Math.sin(x / 30) + y / 100,
      () => 0,
    );
    expect(stretchAt(stretch, [60, 40])[0]).toBeCloseTo(Math.sin(2) + 0.4, 6);
  });

  it('gives the same places by the row as one by one', () => {
    const stretch = stretchOf(
      (x, y) => 0.3 * Math.sin(x / 60 + y / 90),
      (x, y) => 0.3 * Math.cos(x / 80 - y / 70),
    );
    const frame: Frame = { widthPx: 517, heightPx: 400, pxPerMm: 4, originMm: [-3, -2] };
    for (const map of [
      { homography, stretch },
      { homography, stretch: null },
    ] satisfies PlaneMap[]) {
      const xs = new Float64Array(frame.widthPx);
      const ys = new Float64Array(frame.widthPx);
      rowMapper(map, frame)(123, xs, ys);
      for (const i of [0, 5, 100, 516]) {
        const [x, y] = mapPoint(map, [-3 + (i + 0.5) / 4, -2 + 123.5 / 4]);
        expect(xs[i]).toBeCloseTo(x, 3);
        expect(ys[i]).toBeCloseTo(y, 3);
      }
    }
  });

  it('knows how fine the photograph is', () => {
    const frame: Frame = { widthPx: 100, heightPx: 100, pxPerMm: 2, originMm: [0, 0] };
    expect(
      photographPxPerFramePx({ homography: [6, 0, 0, 0, 5, 0, 0, 0, 1], stretch: null }, frame),
    ).toBeCloseTo(3, 9);
  });
});
