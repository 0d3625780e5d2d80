import { describe, expect, it } from 'vitest';
import type { Photograph } from '../photograph.ts';
import type { Frame } from '../raster.ts';
import { sampleGrey, sampleLinear } from './sampleLinear.ts';

const toLinear = Float32Array.from({ length: 256 }, (_, code) => code / 255);

function photograph(widthPx: number, heightPx: number, at: (x: number, y: number) => number[]): Photograph {
  const codes = new Uint8Array(widthPx * heightPx * 3);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) codes.set(at(x, y), (y * widthPx + x) * 3);
  }
  return { widthPx, heightPx, channels: 3, codes, toLinear };
}

describe('sampleLinear', () => {
  it('puts pixel centres on +0.5: the same grid gives the same numbers', () => {
    const photo = photograph(8, 6, (x, y) => [x * 10, y * 10, 7]);
    const frame: Frame = { widthPx: 8, heightPx: 6, pxPerMm: 1, originMm: [0, 0] };
    const raster = sampleLinear(photo, { homography: [1, 0, 0, 0, 1, 0, 0, 0, 1], stretch: null }, frame);
    expect(raster.planes[0][3 + 8 * 2]).toBeCloseTo(30 / 255, 4);
    expect(raster.planes[1][3 + 8 * 2]).toBeCloseTo(20 / 255, 4);
    expect(raster.planes[2][0]).toBeCloseTo(7 / 255, 6);
  });

  it('keeps the mean light of a fine chequer when the frame is coarser', () => {
    const photo = photograph(200, 200, (x, y) => ((x + y) % 2 ? [255, 255, 255] : [0, 0, 0]));
    const frame: Frame = { widthPx: 20, heightPx: 20, pxPerMm: 1, originMm: [5, 5] };
    const raster = sampleGrey(photo, { homography: [3.7, 0.1, 0, 0, 3.7, 0, 0, 0, 1], stretch: null }, frame);
    let sum = 0;
    for (const value of raster.data) {
      expect(Math.abs(value - 0.5)).toBeLessThan(0.05);
      sum += value;
    }
    expect(sum / raster.data.length).toBeCloseTo(0.5, 3);
  });

  it('averages a bar over the footprint', () => {
    const photo = photograph(40, 8, (x) => (x < 10 ? [0, 0, 0] : [255, 255, 255]));
    const frame: Frame = { widthPx: 10, heightPx: 2, pxPerMm: 1, originMm: [0, 0] };
    const raster = sampleLinear(photo, { homography: [4, 0, 0, 0, 4, 0, 0, 0, 1], stretch: null }, frame);
    const row = [...raster.planes[0].subarray(0, 10)];
    expect(row.reduce((a, b) => a + b)).toBeCloseTo(7.5, 1);
  });

  it('is NaN outside the photograph and shared between threads', () => {
    const photo = photograph(10, 10, () => [9, 9, 9]);
    const frame: Frame = { widthPx: 20, heightPx: 20, pxPerMm: 1, originMm: [-5, -5] };
    const raster = sampleLinear(photo, { homography: [1, 0, 0, 0, 1, 0, 0, 0, 1], stretch: null }, frame);
    expect(raster.planes[0][0]).toBeNaN();
    expect(raster.planes[0][10 * 20 + 10]).toBeCloseTo(9 / 255, 6);
    expect(raster.planes[0][10 * 20 + 15]).toBeNaN();
    expect(raster.planes[0].buffer).toBeInstanceOf(SharedArrayBuffer);
  });

  it('reads a grey photograph into three equal planes', () => {
    const codes = Uint8Array.from({ length: 100 }, (_, i) => i);
    const photo: Photograph = { widthPx: 10, heightPx: 10, channels: 1, codes, toLinear };
    const frame: Frame = { widthPx: 10, heightPx: 10, pxPerMm: 1, originMm: [0, 0] };
    const raster = sampleLinear(photo, { homography: [1, 0, 0, 0, 1, 0, 0, 0, 1], stretch: null }, frame);
    expect(raster.planes[2][55]).toBeCloseTo(55 / 255, 4);
  });
});
