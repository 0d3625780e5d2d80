import { expect, test } from 'vitest';
import type { PlanRequest } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { etchPlan } from './etchPlan.ts';
import { splitWash, type ToneGrid } from './splitWash.ts';
import { tannicTable } from './tannicTable.ts';

/** 100 × 60 mm at 1 px/mm. */
const size = { widthPx: 100, heightPx: 60 };
const whole: Point[] = [
  [0, 0],
  [100, 0],
  [100, 60],
  [0, 60],
];
const grid = (tone: (x: number, y: number) => number): ToneGrid => ({
  ...size,
  pxPerMm: 1,
  originMm: [0, 0],
  data: Float32Array.from({ length: 6000 }, (_, i) => tone(i % 100, Math.floor(i / 100))),
});
const areasOf = (split: ReturnType<typeof splitWash>) =>
  Object.fromEntries(split.parts.map((part) => [part.strength, part.areaCm2]));
const outlinedCm2 = (rings: readonly (readonly Point[])[]) =>
  rings.reduce((sum, ring) => sum + signedArea(ring), 0) / 100;

test('a wash in three bands is split by hand: 30, 18 and 12 cm²', () => {
  const split = splitWash(
    grid((x) => (x < 50 ? 0.1 : x < 80 ? 0.4 : 0.9)),
    whole,
  );
  expect(areasOf(split)).toEqual({
    light: expect.closeTo(30, 9),
    middle: expect.closeTo(18, 9),
    dark: expect.closeTo(12, 9),
  });
  for (const part of split.parts) expect(outlinedCm2(part.outlinesMm)).toBeCloseTo(part.areaCm2, 9);
});

test('a crumb goes to the neighbour around it, a place of working size stays, and both are said', () => {
  const split = splitWash(
    grid((x, y) => (x < 5 && y < 5 ? 0.9 : x >= 60 && x < 90 && y >= 20 && y < 40 ? 0.9 : 0.1)),
    whole,
  );
  expect(areasOf(split)).toEqual({ light: expect.closeTo(54, 9), dark: expect.closeTo(6, 9) });
  expect(split.parts[0]!.outlinesMm).toHaveLength(2);
  expect(split.why).toContain('1 place under 4 cm² went to its neighbour');
});

test('crumbs in a row merge whatever their order, and no place under the smallest is left', () => {
  const split = splitWash(
    grid((x, y) => ((x * 7 + y * 13) % 5 === 0 ? 0.9 : (x + y) % 3 === 0 ? 0.4 : 0.1)),
    whole,
  );
  expect(split.parts.reduce((sum, part) => sum + part.areaCm2, 0)).toBeCloseTo(60, 9);
  for (const part of split.parts) expect(part.areaCm2).toBeGreaterThanOrEqual(4);
});

test('what could not be read counts as light', () => {
  const split = splitWash(
    grid((x) => (x < 50 ? Number.NaN : 0.9)),
    whole,
  );
  expect(areasOf(split)).toEqual({ light: expect.closeTo(30, 9), dark: expect.closeTo(30, 9) });
  expect(split.why).toContain('50 % of it could not be read');
});

test('a zone off the grid has no parts', () => {
  const elsewhere = whole.map(([x, y]): Point => [x + 500, y]);
  expect(
    splitWash(
      grid(() => 0.1),
      elsewhere,
    ).parts,
  ).toEqual([]);
});

test('cells that touch at a corner only keep rings that do not cross', () => {
  const split = splitWash(
    grid((x, y) => (x < 50 === y < 30 ? 0.1 : 0.9)),
    whole,
  );
  for (const part of split.parts) {
    expect(part.outlinesMm).toHaveLength(2);
    expect(outlinedCm2(part.outlinesMm)).toBeCloseTo(30, 9);
  }
});

const request = (more: Partial<PlanRequest['zones'][number]>): PlanRequest => ({
  stone: { widthMm: 200, heightMm: 200, thicknessMm: 70, colour: 'grey' },
  zones: [
    { id: 'sky', name: 'Sky', medium: 'wash', deposit: 'wash', polygonMm: whole, ...more },
    {
      id: 'post',
      name: 'Post',
      medium: 'solid',
      polygonMm: whole.map(([x, y]): Point => [x, y + 100]),
    },
  ],
  table: tannicTable,
  tannic: { gramsPerLitre: 30, pH: 3, gum: true },
  people: 1,
  filmMm: 0.5,
  layMm2PerSecond: 1500,
  guardMm: 5,
});
const banded = splitWash(
  grid((x) => (x < 50 ? 0.1 : 0.9)),
  whole,
);

test('the plan lays each part, keeps one row for the zone, and one clock for each part', () => {
  const plan = etchPlan(request({ split: banded }));
  expect(plan.zones.map((zone) => zone.id)).toEqual(['ground', 'sky', 'post']);
  const sky = plan.zones[1]!;
  expect(
    sky.parts.map(({ id, letter, strength, areaCm2, filmMl }) => [id, letter, strength, areaCm2, filmMl]),
  ).toEqual([
    ['sky:light', 'A1', 'light', 30, 1.5],
    ['sky:dark', 'A2', 'dark', 30, 1.5],
  ]);
  expect(sky.filmMl).toBe(3);
  expect(sky.etch!.ml).toBe(sky.parts.reduce((sum, part) => sum + part.etch.ml, 0));
  expect(plan.schedule.feasible).toBe(true);
  expect(new Set(plan.schedule.steps.map((step) => step.zone))).toEqual(
    new Set(['ground', 'sky:light', 'sky:dark', 'post']),
  );
  expect([sky.layFrom, sky.endsAt]).toEqual([
    Math.min(...sky.parts.map((part) => part.layFrom!)),
    Math.max(...sky.parts.map((part) => part.endsAt!)),
  ]);
  expect(plan.buffOrder).toEqual(['sky:light', 'sky:dark', 'post', 'ground']);
  expect(plan.neighbours.map(({ a, b, gapMm }) => [a, b, gapMm])).toContainEqual([
    'sky:light',
    'sky:dark',
    0,
  ]);
});

test('a split into one strength decides the row; a medium that decides alone is not split', () => {
  const one = splitWash(
    grid(() => 0.9),
    whole,
  );
  expect(etchPlan(request({ split: one })).zones[1]).toMatchObject({ strength: 'dark', parts: [] });
  const crayon = etchPlan(request({ split: banded, medium: 'crayon-5', deposit: 'light' })).zones[1]!;
  expect(crayon).toMatchObject({ strength: 'light', parts: [] });
});
