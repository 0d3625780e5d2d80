import { expect, it } from 'vitest';
import type { Point } from '../../science/geometry/point.ts';
import { laidAgainst } from './laidAgainst.ts';

const post: readonly Point[] = [
  [100, 100],
  [120, 100],
  [120, 160],
  [100, 160],
];
const neighbours = { outlines: [post], lines: [], stoneMm: [400, 300] as Point };

it('lays a place against a point before the edge that it lies on', () => {
  expect(laidAgainst([121, 101.5], neighbours, 3)).toEqual({ at: [120, 100], to: 'point' });
  expect(laidAgainst([121, 130], neighbours, 3)).toEqual({ at: [120, 130], to: 'edge' });
});

it('lays it against the border of the stone and into its corners', () => {
  expect(laidAgainst([2, 150], neighbours, 3)).toEqual({ at: [0, 150], to: 'stone border' });
  expect(laidAgainst([398.5, 301], neighbours, 3)).toEqual({ at: [400, 300], to: 'stone border' });
});

it('leaves a place alone that nothing is near, or where it may be laid against nothing', () => {
  expect(laidAgainst([200, 200], neighbours, 3)).toEqual({ at: [200, 200], to: 'nothing' });
  expect(laidAgainst([120, 100], neighbours, 0)).toEqual({ at: [120, 100], to: 'nothing' });
});

it('finds the points of an outline that is still open, but no edge that would close it', () => {
  const open = { outlines: [], lines: [post], stoneMm: neighbours.stoneMm };
  expect(laidAgainst([99, 101], open, 3).to).toBe('point');
  expect(laidAgainst([101, 130], open, 3)).toEqual({ at: [101, 130], to: 'nothing' });
  expect(laidAgainst([121, 130], open, 3).to).toBe('edge');
});
