import { expect, it } from 'vitest';
import type { CoverageMap } from './coverageMaps.ts';
import { differenceMaps } from './differenceMaps.ts';

const side = 40;

/** A tone of 0.3 all over, darker by `more` in a square of 10 mm. */
function toneMap(more: number): CoverageMap {
  const inside = (i: number) => i % side >= 10 && i % side < 30 && i >= 10 * side && i < 30 * side;
  return {
    widthPx: side,
    heightPx: side,
    pxPerMm: 2,
    originMm: [0, 0],
    data: Float32Array.from({ length: side * side }, (_, i) => 0.3 + (inside(i) ? more : 0)),
    deviation: new Float32Array(side * side).fill(0.003),
  };
}

const rule = { within: 0.04, falseDiscoveryRate: 0.05, smallestAreaMm2: 12 };
const even = { before: 1, after: 1 };
const claimed = (floor: number) => {
  const { darker, lighter } = differenceMaps(toneMap(0), toneMap(0.06), even, { ...rule, floor });
  const count = (mask: ArrayLike<number>) => Array.from(mask).filter((value) => value > 0).length;
  return { darker: count(darker.data), lighter: count(lighter.data) };
};

it('claims a change where readings repeat well, and none where two readings of one sheet may differ as much', () => {
  expect(claimed(0.003)).toEqual({ darker: 400, lighter: 0 });
  expect(claimed(0.02)).toEqual({ darker: 0, lighter: 0 });
});
