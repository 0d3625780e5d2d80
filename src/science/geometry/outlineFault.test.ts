import { expect, it } from 'vitest';
import { outlineFault } from './outlineFault.ts';
import type { Point } from './point.ts';

it.each<readonly [string, readonly Point[], ReturnType<typeof outlineFault>]>([
  [
    'a triangle',
    [
      [0, 0],
      [4, 0],
      [0, 3],
    ],
    null,
  ],
  [
    'a triangle with a point twice',
    [
      [0, 0],
      [4, 0],
      [4, 0],
      [0, 3],
    ],
    null,
  ],
  [
    'a hollow shape',
    [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 1],
      [0, 4],
    ],
    null,
  ],
  ['nothing', [], 'degenerate'],
  [
    'one place',
    [
      [2, 2],
      [2, 2],
      [2, 2],
    ],
    'degenerate',
  ],
  [
    'one line',
    [
      [0, 0],
      [2, 2],
      [4, 4],
    ],
    'degenerate',
  ],
  [
    'one line there and back',
    [
      [0, 0],
      [2, 0],
      [4, 0],
      [2, 0],
    ],
    'degenerate',
  ],
  [
    'less than the least',
    [
      [0, 0],
      [0.1, 0],
      [0, 0.1],
    ],
    'degenerate',
  ],
  [
    'a bow tie',
    [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ],
    'self-crossing',
  ],
  [
    'a pentagram',
    [
      [0, 3],
      [4, 3],
      [1, 0],
      [2, 5],
      [3, 0],
    ],
    'self-crossing',
  ],
])('%s', (_, outline, fault) => {
  expect(outlineFault(outline, 0.01)).toBe(fault);
  expect(outlineFault([...outline].reverse(), 0.01)).toBe(fault);
});
