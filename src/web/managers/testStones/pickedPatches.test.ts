import { expect, it } from 'vitest';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { pickedAfter, sharedLevel, withLevel } from './pickedPatches.ts';
import { wholeGrid } from './wholeGrid.ts';

const patches = layGrid(wholeGrid([300, 200], 2, 3));

it('a press picks a patch, its row or its column, and a second one lets them go', () => {
  const row = pickedAfter(patches, new Set(), 'row 2, second', 'row');
  expect([...row]).toEqual(['row 2, first', 'row 2, second', 'row 2, third']);
  expect([...pickedAfter(patches, row, 'row 1, third', 'column')].sort()).toEqual([
    'row 1, third',
    'row 2, first',
    'row 2, second',
    'row 2, third',
  ]);
  expect([...pickedAfter(patches, row, 'row 2, first', 'row')]).toEqual([]);
  expect([...pickedAfter(patches, row, 'row 2, first', 'patch')]).toEqual(['row 2, second', 'row 2, third']);
});

it('a level is typed for all that are picked; an empty one says that it is not known', () => {
  const row = new Set(['row 1, first', 'row 1, second']);
  const typed = withLevel(patches, row, 'etch', ' gum ');
  expect(typed[0]!.treatment).toEqual({ etch: 'gum' });
  expect(typed[2]!.treatment).toEqual({});
  expect(sharedLevel(typed, row, 'etch')).toBe('gum');
  expect(sharedLevel(typed, new Set(['row 1, first', 'row 2, first']), 'etch')).toBeNull();
  expect(withLevel(typed, row, 'etch', '')[0]!.treatment).toEqual({});
});

it('a grid fills its rectangle without leaving it', () => {
  const grid = wholeGrid([300, 200], 6, 8);
  const points = layGrid(grid).flatMap(({ polygonMm }) => polygonMm);
  expect(Math.max(...points.map(([x]) => x))).toBeLessThanOrEqual(300);
  expect(Math.max(...points.map(([, y]) => y))).toBeLessThanOrEqual(200);
});
