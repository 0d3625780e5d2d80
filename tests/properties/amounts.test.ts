import fc from 'fast-check';
import { expect } from 'vitest';
import type { EtchRecipe, PlanRequest, PlanZone } from '../../src/records/etch.ts';
import { signedArea } from '../../src/science/geometry/polygon.ts';
import { acidInGumTable } from '../../src/studio/etch/acidInGumTable.ts';
import { amountRules, etchAmount, totalAmounts } from '../../src/studio/etch/amounts.ts';
import { etchPlan } from '../../src/studio/etch/etchPlan.ts';
import { tannicTable } from '../../src/studio/etch/tannicTable.ts';
import { close, holds } from './holds.ts';
import { millimetres } from './shapes.ts';

const area = millimetres(0, 3000);
const film = fc.integer({ min: 5, max: 8 }).map((tenths) => tenths / 10);
const share = fc.integer({ min: 0, max: 100 }).map((hundredths) => hundredths / 100);
const recipe: fc.Arbitrary<EtchRecipe> = fc.oneof(
  fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 3 }).map(
    (parts): EtchRecipe => ({
      kind: 'parts',
      parts: parts.map((count, i) => ({ material: `material ${i}`, parts: count })),
    }),
  ),
  fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 8 })).map(
    ([low, more]): EtchRecipe => ({
      kind: 'drops',
      acid: 'nitric acid',
      into: 'gum',
      dropsPer30Ml: { low, high: low + more },
    }),
  ),
);

holds(
  'what is measured out adds up, is enough for film and losses, and grows with the area',
  fc.property(recipe, area, area, film, share, (made, a, b, filmMm, strength) => {
    const [less, more] = [Math.min(a, b), Math.max(a, b)].map((cm2) =>
      etchAmount(made, cm2, filmMm, strength),
    );
    for (const [amount, cm2] of [
      [less!, Math.min(a, b)],
      [more!, Math.max(a, b)],
    ] as const) {
      close(
        amount.parts.reduce((sum, part) => sum + part.ml, 0),
        amount.ml,
      );
      close(amount.filmMl, (cm2 * filmMm) / 10);
      expect(amount.ml).toBeGreaterThanOrEqual(amount.filmMl * (1 + amountRules.losses) - 1e-6);
      expect(amount.ml).toBeGreaterThanOrEqual(amountRules.workingMinimumMl - 1e-6);
    }
    expect(more!.ml).toBeGreaterThanOrEqual(less!.ml - 1e-9);
  }),
);

holds(
  'parts keep the recipe’s ratio to the last drop of the cylinder',
  fc.property(recipe, area, film, (made, cm2, filmMm) => {
    if (made.kind !== 'parts') return;
    const { parts } = etchAmount(made, cm2, filmMm, 0);
    for (const [i, part] of parts.entries())
      close(part.ml / parts[0]!.ml, made.parts[i]!.parts / made.parts[0]!.parts, 1e-3);
  }),
);

holds(
  'totals are the sums of their materials, in whatever order and however bundled',
  fc.property(fc.array(fc.tuple(recipe, area), { maxLength: 8 }), (all) => {
    const lists = all.map(([made, cm2]) => etchAmount(made, cm2, 0.5, 0.5).parts);
    const sumOf = (parts: readonly { readonly ml: number }[]) =>
      parts.reduce((sum, part) => sum + part.ml, 0);
    close(sumOf(totalAmounts(lists)), sumOf(lists.flat()), 1e-6);
    const byName = (parts: ReturnType<typeof totalAmounts>) =>
      parts.toSorted((a, b) => a.material.localeCompare(b.material));
    expect(byName(totalAmounts(lists.toReversed()))).toEqual(byName(totalAmounts(lists)));
    expect(byName(totalAmounts([totalAmounts(lists)]))).toEqual(byName(totalAmounts(lists)));
  }),
);

/** A plan names areas to hundredths of a square centimetre. */
const rounding = 0.005 + 1e-9;

/** Zones side by side on a stone of 400 × 500 mm, never overlapping: one to each cell of a grid. */
const request: fc.Arbitrary<PlanRequest> = fc
  .tuple(
    fc.array(
      fc.record({
        width: millimetres(5, 90),
        height: millimetres(5, 90),
        medium: fc.constantFrom('crayon-5', 'crayon-3', 'crayon-1', 'solid', 'graphite', 'pen'),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    fc.constantFrom(tannicTable, acidInGumTable),
    fc.constantFrom(1 as const, 2 as const),
  )
  .map(([drawn, table, people]) => ({
    stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour: 'grey' },
    zones: drawn.map(({ width, height, medium }, i): PlanZone => {
      const [x, y] = [100 * (i % 4), 100 * Math.floor(i / 4)];
      const polygonMm = [
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
      ] as const;
      return { id: `z${i}`, name: `zone ${i}`, medium, polygonMm };
    }),
    table,
    tannic: { gramsPerLitre: 30, pH: 3.1, gum: true },
    people,
    filmMm: 0.5,
    layMm2PerSecond: 1500,
    guardMm: 5,
  }));

holds(
  'a plan’s areas make up the stone, its totals what its zones measure out, its batches the totals',
  fc.property(request, (asked) => {
    const plan = etchPlan(asked);
    const areas = plan.zones.map((zone) => zone.areaCm2);
    expect(Math.abs(areas.reduce((sum, cm2) => sum + cm2, 0) - 2000)).toBeLessThanOrEqual(
      areas.length * rounding,
    );
    for (const zone of asked.zones) {
      const planned = plan.zones.find(({ id }) => id === zone.id)!;
      expect(Math.abs(planned.areaCm2 - signedArea(zone.polygonMm) / 100)).toBeLessThanOrEqual(rounding);
    }
    for (const total of plan.totals) {
      const parts = plan.zones.flatMap((zone) => zone.etch?.parts ?? []);
      const own = parts.filter(({ material }) => material === total.material);
      close(
        own.reduce((sum, part) => sum + part.ml, 0),
        total.ml,
        1e-6,
      );
      close(plan.batches.find(({ material }) => material === total.material)!.ml, total.ml, 1e-3);
    }
    expect(plan.batches.map(({ material }) => material)).toEqual(plan.totals.map(({ material }) => material));
  }),
  20,
);
