import { expect, it } from 'vitest';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { pickedAfter, sharedLevel, withLevel } from './pickedPatches.ts';
import { wholeGrid } from './wholeGrid.ts';

const patches = layGrid(wholeGrid([300, 200], 2, 3));

it('a press picks a patch, its row or its column, and a second one lets them go', () => {
  const row = pickedAfter(patches, new Set(), 'B2', 'row');
  expect([...row]).toEqual(['B1', 'B2', 'B3']);
  expect([...pickedAfter(patches, row, 'A3', 'column')].sort()).toEqual(['A3', 'B1', 'B2', 'B3']);
  expect([...pickedAfter(patches, row, 'B1', 'row')]).toEqual([]);
  expect([...pickedAfter(patches, row, 'B1', 'patch')]).toEqual(['B2', 'B3']);
});

it('a level is typed for all that are picked; an empty one says that it is not known', () => {
  const row = new Set(['A1', 'A2']);
  const typed = withLevel(patches, row, 'etch', ' gum ');
  expect(typed[0]!.treatment).toEqual({ etch: 'gum' });
  expect(typed[2]!.treatment).toEqual({});
  expect(sharedLevel(typed, row, 'etch')).toBe('gum');
  expect(sharedLevel(typed, new Set(['A1', 'B1']), 'etch')).toBeNull();
  expect(withLevel(typed, row, 'etch', '')[0]!.treatment).toEqual({});
});

it('a grid fills its rectangle without leaving it', () => {
  const grid = wholeGrid([300, 200], 6, 8);
  const points = layGrid(grid).flatMap(({ polygonMm }) => polygonMm);
  expect(Math.max(...points.map(([x]) => x))).toBeLessThanOrEqual(300);
  expect(Math.max(...points.map(([, y]) => y))).toBeLessThanOrEqual(200);
});
