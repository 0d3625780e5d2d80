import { expect, it } from 'vitest';
import type { PatchResidual } from '../../../records/testStoneAnswer.ts';
import { edgeToEdge, farPatches, scatterByTone } from './readingQuestions.ts';

const left = (residuals: readonly number[]) =>
  residuals.map(
    (residual, index): PatchResidual => ({
      stone: 'T-2',
      patch: `row 1, ${index}`,
      centreMm: [0, 0],
      fitted: index / residuals.length,
      residual,
      expected: 0,
    }),
  );

it('names the patch that lies far off, and none where all lie near', () => {
  const near = left([0.01, -0.01, 0.012, -0.008, 0.011, 0.009]);
  expect(farPatches(near)).toMatchObject({ far: [], answer: 'No: all 6 lie within ±0.01.' });
  const one = farPatches(left([0.01, -0.01, 0.012, -0.12, 0.011, 0.009]));
  expect(one.far.map(({ patch }) => patch)).toEqual(['row 1, 3']);
  expect(one.answer).toBe('Yes: row 1, 3 on T-2 printed 0.12 lighter than the rest say.');
});

it('tells scatter in light and dark apart only where one is twice the other, on enough patches', () => {
  const alike = left(Array.from({ length: 18 }, (_, index) => (index % 2 ? 0.01 : -0.012)));
  expect(scatterByTone(alike).answer).toMatch(/^Yes, near enough: ±0\.011 in the lightest third, ±0\.011/);
  const fan = left(Array.from({ length: 18 }, (_, index) => (index % 2 ? 1 : -1) * (0.004 + 0.003 * index)));
  expect(scatterByTone(fan).answer).toMatch(/^No: /);
  expect(scatterByTone(left([0.1, -0.1, 0.1])).thirds.map(({ usual }) => usual)).toEqual([null, null, null]);
});

it('says a slope over the stone only where it is surely one', () => {
  const slope = (low: number, high: number) =>
    ({ along: 'left to right', per100Mm: (low + high) / 2, low, high }) as const;
  expect(edgeToEdge([]).answer).toMatch(/^Not known/);
  expect(edgeToEdge([slope(-0.01, 0.02)]).answer).toBe(
    'Not that it shows: from left to right −0.010 to +0.020 every 100 mm.',
  );
  expect(edgeToEdge([slope(0.01, 0.02)]).answer).toMatch(/^Yes: from left to right \+0\.010/);
});
