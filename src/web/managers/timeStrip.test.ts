import { expect, it } from 'vitest';
import { etchPlan } from '../../studio/etch/etchPlan.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';
import { timeStrip } from './timeStrip.ts';

const square = (x: number) =>
  [
    [x, 50],
    [x + 100, 50],
    [x + 100, 150],
    [x, 150],
  ] as const;
const plan = etchPlan({
  stone: { widthMm: 400, heightMm: 300, thicknessMm: 80, colour: 'grey' },
  zones: [
    { id: 'sky', name: 'Sky', medium: 'crayon-5', polygonMm: square(30) },
    { id: 'post', name: 'Post', medium: 'solid', polygonMm: square(200) },
  ],
  table: tannicTable,
  tannic: null,
  people: 1,
  filmMm: 0.5,
  layMm2PerSecond: 1500,
  guardMm: 5,
});

it('holds every touch of every zone, in whole minutes', () => {
  const strip = timeStrip(plan)!;
  expect(strip.persons).toHaveLength(1);
  expect(strip.persons[0]!.touches).toHaveLength(plan.schedule.steps.length);
  expect(strip.lengthSeconds % 60).toBe(0);
  expect(strip.lengthSeconds).toBeGreaterThanOrEqual(Math.max(...plan.schedule.steps.map(({ to }) => to)));
  expect(new Set(strip.persons[0]!.touches.map(({ letter }) => letter))).toEqual(new Set(['G', 'A', 'B']));
  expect(strip.zones.map(({ letter }) => letter).toSorted()).toEqual(['A', 'B', 'G']);
  for (const zone of strip.zones) expect(zone.endsAt).toBeGreaterThan(zone.layTo);
});

it('has nothing to show where no schedule was found', () => {
  expect(timeStrip({ ...plan, schedule: { ...plan.schedule, steps: [] } })).toBeNull();
});
