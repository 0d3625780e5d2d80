import { expect, it } from 'vitest';
import { hatchMarksAt, hatchOrder, hatchTiles } from './hatching.ts';

function raster(change: (typeof hatchOrder)[number]): string {
  return Array.from({ length: 90 * 90 }, (_, cell) =>
    hatchMarksAt(change, (cell % 90) / 3, Math.floor(cell / 90) / 3) ? '1' : '0',
  ).join('');
}

function inkShare(marks: string): number {
  return marks.split('1').length / marks.length;
}

it('leaves held blank and marks every other change between 2 and 60 parts in a hundred', () => {
  expect(raster('held')).not.toContain('1');
  for (const change of hatchOrder.filter((one) => one !== 'held')) {
    expect(inkShare(raster(change)), change).toBeGreaterThan(0.02);
    expect(inkShare(raster(change)), change).toBeLessThan(0.6);
  }
});

it('gives no two changes the same marks', () => {
  expect(new Set(hatchOrder.map(raster)).size).toBe(Object.keys(hatchTiles).length);
});

it('repeats from tile to tile, to the left of the origin too', () => {
  for (const change of hatchOrder) {
    const { width, height } = hatchTiles[change];
    expect(hatchMarksAt(change, 2.3 - 3 * width, 3.1 + 2 * height)).toBe(hatchMarksAt(change, 2.3, 3.1));
  }
});
