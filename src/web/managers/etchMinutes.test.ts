import { expect, it } from 'vitest';
import type { PlanRequest } from '../../records/etch.ts';
import { etchPlan } from '../../studio/etch/etchPlan.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';
import { etchMinutes } from './etchMinutes.ts';

const square = (x: number) =>
  [
    [x, 50],
    [x + 100, 50],
    [x + 100, 150],
    [x, 150],
  ] as const;
const asked: PlanRequest = {
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
};
const plan = etchPlan(asked);

it('tells every touch of every zone once, in the minute in which it begins', () => {
  const { persons, minutes } = etchMinutes(plan)!;
  expect(persons).toHaveLength(1);
  const moments = minutes.flatMap((minute) => minute.moments);
  expect(moments.map(({ at }) => at)).toEqual(
    plan.schedule.steps.map(({ from }) => from).toSorted((a, b) => a - b),
  );
  for (const { from, moments } of minutes)
    for (const { at } of moments) expect(Math.floor(at / 60) * 60).toBe(from);
  expect(new Set(moments.map(({ touches }) => touches[0]!.letter))).toEqual(new Set(['G', 'A', 'B']));
});

it('shows what lies wet as a minute ends, and a bare stone at the end', () => {
  const { minutes } = etchMinutes(plan)!;
  for (const { to, wet } of minutes)
    for (const { id, layFrom, endsAt } of plan.zones)
      expect(wet.has(id), `${id} at ${to} s`).toBe(layFrom! < to && endsAt! > to);
  expect(minutes[0]!.wet.size).toBeGreaterThan(0);
  expect(minutes.at(-1)!.wet.size).toBe(0);
});

it('lays what two people do at the same moment side by side', () => {
  const two = etchMinutes(etchPlan({ ...asked, people: 2 }))!;
  expect(two.persons).toHaveLength(2);
  for (const { touches } of two.minutes.flatMap((minute) => minute.moments)) {
    expect(touches).toHaveLength(2);
    expect(touches.some((touch) => touch !== null)).toBe(true);
  }
});

it('has nothing to show where no schedule was found', () => {
  expect(etchMinutes({ ...plan, schedule: { ...plan.schedule, steps: [] } })).toBeNull();
});
