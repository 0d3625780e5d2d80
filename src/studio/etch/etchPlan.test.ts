import { expect, test } from 'vitest';
import type { PlanRequest, PlanZone } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { acidInGumTable } from './acidInGumTable.ts';
import { etchPlan } from './etchPlan.ts';
import { tannicTable } from './tannicTable.ts';

const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const zone = (id: string, medium: string, polygonMm: Point[], more: Partial<PlanZone> = {}): PlanZone => ({
  id,
  name: id,
  medium,
  polygonMm,
  ...more,
});
const request = (zones: PlanZone[], more: Partial<PlanRequest> = {}): PlanRequest => ({
  stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour: 'grey' },
  zones,
  table: tannicTable,
  tannic: { gramsPerLitre: 30, pH: 3.1, gum: true },
  people: 1,
  filmMm: 0.5,
  layMm2PerSecond: 1500,
  guardMm: 5,
  ...more,
});
const rowOf = (plan: ReturnType<typeof etchPlan>, id: string) => plan.zones.find((row) => row.id === id)!;

test('40 × 50 cm with 900 cm² of zones leaves 1100 cm² of ground: 55 ml of film, rounded up with losses', () => {
  const ground = rowOf(etchPlan(request([zone('a', 'crayon-4', box(20, 20, 300, 300))])), 'ground');
  expect(ground.areaCm2).toBe(1100);
  expect(ground.filmMl).toBe(55);
  expect(ground.etch).toEqual({ name: 'gum alone', parts: [{ material: 'gum', ml: 65 }], ml: 65 });
});

test('overlapping zones are taken from the ground once', () => {
  const plan = etchPlan(
    request([zone('a', 'crayon-4', box(0, 0, 100, 100)), zone('b', 'crayon-4', box(50, 0, 100, 100))]),
  );
  expect(rowOf(plan, 'ground').areaCm2).toBe(1850);
});

test('light crayon of 400 cm² touching a solid of 60 cm²: one person keeps it, gum first and on longest, light lifted first', () => {
  const plan = etchPlan(
    request([
      zone('crayon', 'crayon-5', box(20, 20, 200, 200)),
      zone('post', 'solid', box(220, 20, 60, 100)),
    ]),
  );
  expect(plan.schedule.feasible).toBe(true);
  expect(rowOf(plan, 'ground').layFrom).toBe(0);
  const ends = ['crayon', 'post', 'ground'].map((id) => rowOf(plan, id).endsAt!);
  expect(ends).toEqual(ends.toSorted((a, b) => a - b));
  expect(plan.buffOrder).toEqual(['crayon', 'post', 'ground']);
  expect(plan.neighbours).toEqual([
    { a: 'crayon', b: 'post', gapMm: 0, why: 'post takes the stronger etch: keep it out of crayon' },
  ]);
});

test('a medium without a row is no error: the plan goes on and says to test a patch', () => {
  const plan = etchPlan(
    request([zone('smear', 'stumping', box(20, 20, 50, 50)), zone('lines', 'pen', box(100, 20, 50, 50))]),
  );
  expect(rowOf(plan, 'smear').etch).toBeNull();
  expect(rowOf(plan, 'smear').why).toContain('test a patch first');
  expect(rowOf(plan, 'lines').etch!.ml).toBeGreaterThan(0);
  expect(plan.cautions[0]).toBe('smear: no rule here, test a patch first.');
  expect(plan.schedule.steps.some((step) => step.zone === 'smear')).toBe(false);
});

test('a wash that spans deposits is planned by its light part, and says so', () => {
  const row = rowOf(
    etchPlan(
      request([
        zone('sky', 'tusche-water', box(20, 20, 100, 100), {
          deposit: 'wash',
          tone: { mean: 0.35, darkest: 0.9 },
        }),
      ]),
    ),
    'sky',
  );
  expect(row.strength).toBe('light');
  expect(row.why).toContain('planned by its light part');
});

test('where medium and deposit disagree, the weaker etch is chosen', () => {
  const plan = etchPlan(
    request([
      zone('soft', 'crayon-1', box(20, 20, 50, 50), { deposit: 'light' }),
      zone('hard', 'crayon-5', box(100, 20, 50, 50), { deposit: 'dark' }),
    ]),
  );
  expect([rowOf(plan, 'soft').strength, rowOf(plan, 'hard').strength]).toEqual(['light', 'light']);
});

test('acid in gum: whole drops in proportion to the gum, fewer on yellow stone than on dark grey', () => {
  const dropsOn = (colour: string) => {
    const plan = etchPlan(
      request([zone('post', 'solid', box(20, 20, 100, 100))], {
        table: acidInGumTable,
        stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour },
      }),
    );
    return rowOf(plan, 'post').etch!.parts.find((part) => part.drops)!.drops!;
  };
  expect([dropsOn('yellow'), dropsOn('grey'), dropsOn('dark grey')]).toEqual([5, 6, 6]);
});

test('amounts by hand: film 0.5 mm, a tenth lost, each part up to the next 5 ml, at least 5 ml in all', () => {
  const plan = etchPlan(
    request([
      zone('mud', 'crayon-2', box(20, 20, 200, 150)),
      zone('post', 'solid', box(240, 20, 20, 30)),
      zone('reeds', 'pen', box(240, 60, 100, 80)),
    ]),
  );
  const byHand = {
    // 300 cm²: 15 ml, with losses 16.5, two parts of 8.25 each up to 10
    mud: { filmMl: 15, ml: 20 },
    // 6 cm²: 0.3 ml, the working minimum of 5
    post: { filmMl: 0.3, ml: 5 },
    // 80 cm²: 4 ml, the working minimum of 5, two parts of 2.5 each up to 5
    reeds: { filmMl: 4, ml: 10 },
    // 2000 − 386 = 1614 cm²: 80.7 ml, with losses 88.77, up to 90
    ground: { filmMl: 80.7, ml: 90 },
  };
  for (const [id, { filmMl, ml }] of Object.entries(byHand)) {
    expect([id, rowOf(plan, id).filmMl, rowOf(plan, id).etch!.ml]).toEqual([id, filmMl, ml]);
  }
  expect(plan.batches).toEqual([
    // 80.7 + 15/2 + 4/2
    { material: 'gum', filmMl: 90.2, ml: 105, grams: null, zones: ['ground', 'mud', 'reeds'] },
    // 15/2 + 0.3 + 4/2; 20 ml at 30 g/l
    { material: 'tannic solution', filmMl: 9.8, ml: 20, grams: 0.6, zones: ['mud', 'post', 'reeds'] },
  ]);
});

test('zones are lettered in their order, the ground G', () => {
  const zones = Array.from({ length: 26 }, (_, i) => zone(`z${i}`, 'stumping', box(5 + 15 * i, 20, 10, 10)));
  const letters = etchPlan(request(zones)).zones.map((row) => row.letter);
  expect(letters.join(' ')).toBe('G A B C D E F H J K L M N P Q R S T U V W X Y Z AA AB AC');
});

test('totals add every part once', () => {
  const plan = etchPlan(
    request([zone('a', 'crayon-2', box(20, 20, 200, 200)), zone('b', 'crayon-1', box(240, 20, 100, 100))]),
  );
  const sum = (material: string) =>
    plan.zones.flatMap((row) => row.etch?.parts ?? []).filter((part) => part.material === material);
  for (const total of plan.totals) {
    expect(total.ml).toBeCloseTo(
      sum(total.material).reduce((all, part) => all + part.ml, 0),
      9,
    );
  }
});

test('an undescribed tannic solution, and one without gum, are named in the cautions', () => {
  const zones = [zone('a', 'crayon-2', box(20, 20, 50, 50))];
  expect(etchPlan(request(zones, { tannic: null })).cautions[0]).toContain('its concentration');
  const gumless = etchPlan(request(zones, { tannic: { gramsPerLitre: 30, pH: 3, gum: false } }));
  expect(gumless.cautions[0]).toContain('no gum');
});

test('what cannot be kept comes with changes that were tried out', () => {
  const plan = etchPlan(
    request([zone('a', 'crayon-2', box(10, 10, 370, 230)), zone('b', 'crayon-3', box(10, 250, 370, 230))]),
  );
  expect(plan.schedule.feasible).toBe(false);
  expect(plan.schedule.steps).toEqual([]);
  expect(plan.schedule.changes.map((change) => change.change)).toContain('second-person');
  expect(plan.schedule.changes.every((change) => change.effect.length > 20)).toBe(true);
});

test('in two stages the strongest etch is laid once the ground and all weaker ones are lifted', () => {
  const zones = [zone('a', 'crayon-4', box(20, 20, 60, 60)), zone('b', 'crayon-1', box(240, 20, 60, 60))];
  const { schedule } = etchPlan(request(zones, { stages: 2 }));
  expect(schedule.feasible).toBe(true);
  const lifted = schedule.steps.filter(({ zone: id, action }) => action === 'lift' && id !== 'b');
  const laid = schedule.steps.find(({ zone: id, action }) => action === 'lay' && id === 'b')!;
  expect(lifted.map(({ zone: id }) => id).sort()).toEqual(['a', 'ground']);
  expect(laid.from).toBeGreaterThan(Math.max(...lifted.map(({ to }) => to)));
  // one strength alone can't be parted
  const alone = etchPlan(request([zones[1]!], { stages: 2 })).schedule.steps;
  expect(alone).toEqual(etchPlan(request([zones[1]!])).schedule.steps);
});

test('a deeper film may lie longer only where the depth of the table’s gaps is said', () => {
  const zones = [zone('b', 'crayon-1', box(240, 20, 60, 60))];
  const gap = (more: object) => etchPlan(request(zones, more)).zones.at(-1)!.longestGapSeconds;
  expect(gap({ filmMm: 0.8 })).toBe(30);
  expect(gap({ filmMm: 0.8, gapFilmMm: 0.5 })).toBe(48);
});
