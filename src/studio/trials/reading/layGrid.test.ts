import { expect, it } from 'vitest';
import { layGrid, rowLetters } from './layGrid.ts';

const grid = {
  rows: 2,
  columns: 2,
  originMm: [10, 20],
  squareMm: [30, 40],
  gutterMm: [5, 6],
  turnDegrees: 0,
  steps: 1,
} as const;

it('letters go on after Z', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(rowLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});

it('lays squares with gutters by rows, turned about the first corner', () => {
  const patches = layGrid(grid);
  expect(patches.map(({ id, square, row, column }) => [id, square, row, column])).toEqual([
    ['A1', 'A1', 1, 1],
    ['A2', 'A2', 1, 2],
    ['B1', 'B1', 2, 1],
    ['B2', 'B2', 2, 2],
  ]);
  expect(patches[3]!.polygonMm).toEqual([
    [45, 66],
    [75, 66],
    [75, 106],
    [45, 106],
  ]);
  const [turned] = layGrid({ ...grid, turnDegrees: 30 });
  expect(turned!.polygonMm[0]).toEqual([10, 20]);
  expect(turned!.polygonMm[1]).toEqual([35.98, 35]);
});

it('parts a square into steps that share it, and keeps what was typed under an id', () => {
  const steps = layGrid({ ...grid, rows: 1, columns: 1, steps: 3 });
  expect(steps.map(({ id, square }) => [id, square])).toEqual([
    ['A1.1', 'A1'],
    ['A1.2', 'A1'],
    ['A1.3', 'A1'],
  ]);
  expect(steps[2]!.polygonMm[1]).toEqual([40, 20]);
  const typed = layGrid(grid).map((patch) => ({ ...patch, treatment: { etch: patch.id }, strip: 'I' }));
  const again = layGrid({ ...grid, columns: 3 }, typed);
  expect(again[0]).toMatchObject({ treatment: { etch: 'A1' }, strip: 'I' });
  expect(again[2]).toMatchObject({ id: 'A3', treatment: {}, strip: null });
});
