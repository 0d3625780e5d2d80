import { expect, it } from 'vitest';
import type { TrialWish } from '../../../records/trialDesign.ts';
import { stonesOfTrial } from './stonesOfTrial.ts';
import { trialLayout } from './trialLayout.ts';

const wish: TrialWish = {
  title: 'T-4',
  stone: { widthMm: 300, heightMm: 400 },
  stones: 2,
  whole: null,
  sub: { name: 'medium', levels: ['crayon 2', 'wash', 'None'] },
  layout: 'blocked',
  perStone: { name: 'etch', levels: ['gum', 'tannic'] },
  patchRepeats: 1,
  stripRepeats: 1,
  control: 'None',
  patchMm: null,
  gutterMm: 6,
  stripGutterMm: 12,
  border: { sidesMm: 15, endsMm: 25 },
  seed: 3,
  wanted: null,
  scatter: null,
};

it('has its patches inside the rectangle within the border, in rows and columns as they lie', () => {
  const layout = trialLayout(wish);
  if (!layout.ok) throw new Error(layout.error.message);
  const stones = stonesOfTrial(wish, layout.value);
  expect(stones.map(({ name }) => name)).toEqual(['T-4, stone 1 of 2', 'T-4, stone 2 of 2']);
  for (const { sizeMm, patches } of stones) {
    expect(patches).toHaveLength(6);
    for (const { polygonMm } of patches)
      for (const [x, y] of polygonMm) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(sizeMm[0]);
        expect(y).toBeLessThanOrEqual(sizeMm[1]);
      }
    const places = new Set(patches.map(({ row, column }) => `${row} ${column}`));
    expect(places.size).toBe(6);
    expect(new Set(patches.map(({ treatment }) => treatment.etch)).size, 'one etch to a stone').toBe(1);
  }
});

it('marks as control what is compared with, on every stone', () => {
  const layout = trialLayout(wish);
  if (!layout.ok) throw new Error(layout.error.message);
  for (const { patches } of stonesOfTrial(wish, layout.value))
    expect(
      patches.filter(({ intention }) => intention === 'control').map(({ treatment }) => treatment.medium),
    ).toEqual(['None', 'None']);
});
