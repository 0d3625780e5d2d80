import { expect, it } from 'vitest';
import type { Corners } from '../../../science/geometry/point.ts';
import { frameCorners } from './frameCorners.ts';
import { workFrame } from './workFrame.ts';

const stone = { widthMm: 400, heightMm: 500 } as never;
const rectangle = { offsetMm: [100, 50], sizeMm: [200, 400] } as const;
const px: Corners = [
  [10, 20],
  [810, 20],
  [810, 1020],
  [10, 1020],
];

it('finds the work rectangle on a photograph whose marks are those of the stone', () => {
  const found = frameCorners({ of: 'stone', px }, { rectangle, stone, zones: [] })!;
  const expected = [
    [210, 120],
    [610, 120],
    [610, 920],
    [210, 920],
  ];
  for (const [at, [x, y]] of expected.entries()) {
    expect(found[at]![0]).toBeCloseTo(x!, 6);
    expect(found[at]![1]).toBeCloseTo(y!, 6);
  }
});

it('takes the marks as they are where they are those of what is measured, and none where they say nothing of it', () => {
  expect(frameCorners({ of: 'rectangle', px }, { rectangle, stone, zones: [] })).toBe(px);
  expect(frameCorners({ of: 'rectangle', px }, { rectangle: null, stone, zones: [] })).toBeNull();
  expect(frameCorners(null, { rectangle, stone, zones: [] })).toBeNull();
});

it('takes the extent of the zones and 10 mm round them where there is no work rectangle, never beyond the stone', () => {
  const zones = [
    {
      polygonMm: [
        [5, 60],
        [290, 60],
        [290, 440],
      ],
    },
  ] as never;
  expect(workFrame({ rectangle: null, stone, zones })).toEqual({ offsetMm: [0, 50], sizeMm: [300, 400] });
  const [first, , third] = frameCorners({ of: 'stone', px }, { rectangle: null, stone, zones })!;
  expect(first.map(Math.round)).toEqual([10, 120]);
  expect(third.map(Math.round)).toEqual([610, 920]);
});
