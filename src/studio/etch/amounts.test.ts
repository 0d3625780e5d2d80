import { expect, test } from 'vitest';
import { etchAmount, strengthShareOfColour } from './amounts.ts';

const drops = {
  kind: 'drops',
  acid: 'nitric acid',
  into: 'gum',
  dropsPer30Ml: { low: 6, high: 12 },
} as const;

test('drops go from the fewest on yellow stone to more on dark, by the table’s range and what is mixed', () => {
  expect(['light yellow', 'grey', '', 'Dark grey'].map(strengthShareOfColour)).toEqual([
    0.25, 0.5, 0.5, 0.75,
  ]);
  // 600 cm² at 0.8 mm are 48 ml; with a tenth for losses 52.8, in fives 55 ml.
  const counted = [0, 0.25, 0.5, 0.75, 1].map((share) => etchAmount(drops, 600, 0.8, share).parts[1]!.drops);
  expect(counted).toEqual([11, 14, 17, 19, 22]);
  expect(etchAmount(drops, 600, 0.8, 0.5)).toEqual({
    filmMl: 48,
    parts: [
      { material: 'gum', ml: 55 },
      { material: 'nitric acid', ml: 0.85, drops: 17 },
    ],
    ml: 55.85,
  });
});

test('parts are measured in whole divisions, and never less than can be worked with', () => {
  const parts = {
    kind: 'parts',
    parts: [
      { material: 'gum', parts: 2 },
      { material: 'tannic solution', parts: 1 },
    ],
  } as const;
  const made = etchAmount(parts, 1, 0.6, 0.5);
  expect(made.filmMl).toBeCloseTo(0.06, 12);
  expect(made.parts.map(({ ml }) => ml)).toEqual([10, 5]);
  expect(made.ml).toBe(15);
});
