import { expect, it } from 'vitest';
import type { Point } from '../../science/geometry/point.ts';
import { snapped } from './snapping.ts';

const post: readonly Point[] = [
  [100, 100],
  [120, 100],
  [120, 160],
  [100, 160],
];
const targets = { outlines: [post], lines: [], stoneMm: [400, 300] as Point };

it('draws to a point before the edge that it lies on', () => {
  expect(snapped([121, 101.5], targets, 3)).toEqual({ at: [120, 100], to: 'point' });
  expect(snapped([121, 130], targets, 3)).toEqual({ at: [120, 130], to: 'edge' });
});

it('draws to the border of the stone and into its corners', () => {
  expect(snapped([2, 150], targets, 3)).toEqual({ at: [0, 150], to: 'stone border' });
  expect(snapped([398.5, 301], targets, 3)).toEqual({ at: [400, 300], to: 'stone border' });
});

it('leaves a place alone that nothing is near, or where nothing may draw', () => {
  expect(snapped([200, 200], targets, 3)).toEqual({ at: [200, 200], to: 'nothing' });
  expect(snapped([120, 100], targets, 0)).toEqual({ at: [120, 100], to: 'nothing' });
});

it('finds the points of an outline that is still open, but no edge that would close it', () => {
  const open = { outlines: [], lines: [post], stoneMm: targets.stoneMm };
  expect(snapped([99, 101], open, 3).to).toBe('point');
  expect(snapped([101, 130], open, 3)).toEqual({ at: [101, 130], to: 'nothing' });
  expect(snapped([121, 130], open, 3).to).toBe('edge');
});
