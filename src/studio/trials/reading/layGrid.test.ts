import { expect, it } from 'vitest';
import { layGrid } from './layGrid.ts';

const grid = {
  rows: 2,
  columns: 2,
  originMm: [10, 20],
  squareMm: [30, 40],
  gutterMm: [5, 6],
  turnDegrees: 0,
  steps: 1,
} as const;

it('lays squares with gutters by rows, turned about the first corner', () => {
  const patches = layGrid(grid);
  expect(patches.map(({ id, square, row, column }) => [id, square, row, column])).toEqual([
    ['row 1, first', 'row 1, first', 1, 1],
    ['row 1, second', 'row 1, second', 1, 2],
    ['row 2, first', 'row 2, first', 2, 1],
    ['row 2, second', 'row 2, second', 2, 2],
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
    ['row 1, first, step 1', 'row 1, first'],
    ['row 1, first, step 2', 'row 1, first'],
    ['row 1, first, step 3', 'row 1, first'],
  ]);
  expect(steps[2]!.polygonMm[1]).toEqual([40, 20]);
  const typed = layGrid(grid).map((patch) => ({ ...patch, treatment: { etch: patch.id }, strip: 'I' }));
  const again = layGrid({ ...grid, columns: 3 }, typed);
  expect(again[0]).toMatchObject({ treatment: { etch: 'row 1, first' }, strip: 'I' });
  expect(again[2]).toMatchObject({ id: 'row 1, third', treatment: {}, strip: null });
});

it('a square that was named before names were read off the stone keeps its id, and what was typed', () => {
  const before = layGrid({ ...grid, steps: 2 }).map((patch, index) => ({
    ...patch,
    id: `${'AB'[patch.row! - 1]}${patch.column}.${(index % 2) + 1}`,
    treatment: { etch: `${index}` },
  }));
  const again = layGrid({ ...grid, steps: 2, columns: 3 }, before);
  expect(again.slice(0, 6).map(({ id, treatment }) => [id, treatment.etch])).toEqual([
    ['A1.1', '0'],
    ['A1.2', '1'],
    ['A2.1', '2'],
    ['A2.2', '3'],
    ['row 1, third, step 1', undefined],
    ['row 1, third, step 2', undefined],
  ]);
});
