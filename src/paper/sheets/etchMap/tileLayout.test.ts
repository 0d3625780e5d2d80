import { describe, expect, it } from 'vitest';
import { papers } from '../../../records/paper.ts';
import { marginMm, overlapMm, tileLayout } from './tileLayout.ts';

const stones: readonly (readonly [number, number])[] = [
  [150, 180],
  [300, 400],
  [400, 500],
  [640, 900],
  [1200, 300],
];

describe.each(papers)('tiles on %s', (paper) => {
  it.each(stones)('cover a stone of %d × %d mm, each edge pasted on the next', (widthMm, heightMm) => {
    const { tiles, columns, rows, pageMm } = tileLayout(widthMm, heightMm, paper);
    expect(tiles.map(({ number }) => number)).toEqual(tiles.map((_, index) => index + 1));
    expect(tiles.length).toBe(columns * rows);
    const [first, last] = [tiles[0]!.shown, tiles.at(-1)!.shown];
    expect(Math.max(first.left, first.top)).toBeLessThanOrEqual(0);
    expect(last.right).toBeGreaterThanOrEqual(widthMm);
    expect(last.bottom).toBeGreaterThanOrEqual(heightMm);
    for (const { shown, kept, column, row } of tiles) {
      expect(shown.right - shown.left).toBeCloseTo(pageMm[0] - 2 * marginMm.side, 9);
      expect(shown.bottom - shown.top).toBeCloseTo(pageMm[1] - marginMm.top - marginMm.bottom, 9);
      const right = tiles.find((tile) => tile.row === row && tile.column === column + 1);
      const below = tiles.find((tile) => tile.column === column && tile.row === row + 1);
      expect(kept.right).toBeCloseTo(right ? right.kept.left : shown.right, 9);
      expect(kept.bottom).toBeCloseTo(below ? below.kept.top : shown.bottom, 9);
      if (right) expect(shown.right - right.shown.left).toBeCloseTo(overlapMm, 9);
      if (below) expect(shown.bottom - below.shown.top).toBeCloseTo(overlapMm, 9);
    }
  });
});

it('lays the paper across where that takes fewer tiles', () => {
  const wide = tileLayout(260, 150, 'a4');
  expect(wide.tiles.length).toBe(1);
  expect(wide.pageMm).toEqual([297, 210]);
  expect(tileLayout(150, 220, 'a4')).toMatchObject({ pageMm: [210, 297], columns: 1, rows: 1 });
});
