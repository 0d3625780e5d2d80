import { expect, it } from 'vitest';
import type { WorkZone } from '../../records/work.ts';
import { drawingDifferences, sameDrawing } from './drawingDifferences.ts';

const sky: WorkZone = {
  id: 'sky',
  name: 'Sky',
  medium: 'wash',
  tone: { mean: 0.3, darkest: 0.6, basis: 'typed' },
  polygonMm: [
    [0, 0],
    [10, 0],
    [10, 10],
  ],
};
const drawing = { head: 'top', rectangle: null, zones: [sky] } as const;

it('finds the same in another order of fields, and in what is left out', () => {
  const tone = { basis: 'typed', darkest: 0.6, mean: 0.3 } as const;
  expect(sameDrawing(drawing, { ...drawing, zones: [{ ...sky, tone, intention: 'drawn' }] })).toBe(true);
  expect(drawingDifferences(drawing, { ...drawing, zones: [{ ...sky, tone }] })).toEqual([]);
});

it('names what differs, and on which side it is', () => {
  const moved = {
    ...sky,
    medium: 'tusche-water',
    polygonMm: [
      [0, 0],
      [12, 0],
      [10, 10],
    ],
  } as const;
  const post = { ...sky, id: 'post', name: 'Post' };
  const moon = { ...sky, id: 'moon', name: 'Moon' };
  const here = { ...drawing, zones: [moved, post] };
  const kept = { ...drawing, head: 'left', zones: [sky, moon] } as const;
  expect(drawingDifferences(here, kept)).toEqual([
    'The head lies at the left edge there, at the top here.',
    'Sky: the outline and the medium differ.',
    'Post is only here.',
    'Moon is only there.',
  ]);
  expect(sameDrawing(here, kept)).toBe(false);
});
