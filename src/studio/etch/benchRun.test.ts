import { describe, expect, it } from 'vitest';
import type { PlanRequest } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { benchRun } from './benchRun.ts';
import { etchPlan } from './etchPlan.ts';
import { plannedMixtures } from './mixtures.ts';
import { tannicTable } from './tannicTable.ts';

const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

function planOf(zones: PlanRequest['zones'], people: 1 | 2 = 2) {
  return etchPlan({
    stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour: 'grey' },
    zones,
    table: tannicTable,
    tannic: null,
    people,
    filmMm: 0.5,
    layMm2PerSecond: 1500,
    guardMm: 5,
  });
}

const sky = { id: 'sky', name: 'sky', medium: 'crayon-5', polygonMm: box(50, 50, 200, 100) };
const mud = { id: 'mud', name: 'mudbank', medium: 'crayon-2', polygonMm: box(50, 150, 200, 100) };
const post = { id: 'post', name: 'post', medium: 'solid', polygonMm: box(250, 150, 20, 100) };
const smoke = { id: 'smoke', name: 'smoke', medium: 'candle smoke', polygonMm: box(300, 300, 40, 40) };

describe('the run at the bench', () => {
  const plan = planOf([sky, mud, post, smoke]);
  const run = benchRun(plan);

  it('lists every place by the clock, one without a rule at the end', () => {
    const clocked = run.lines.filter((line) => line.person !== null);
    expect(run.lines.map(({ row }) => row.letter).sort()).toEqual(['A', 'B', 'C', 'D', 'G']);
    expect(clocked.map(({ row }) => row.layFrom)).toEqual(
      clocked.map(({ row }) => row.layFrom).toSorted((a, b) => a! - b!),
    );
    expect(run.lines.at(-1)).toMatchObject({ name: 'Smoke', person: null, liftAt: null });
  });

  it('tells every touch of the schedule once, each to the hands that make it', () => {
    const { steps } = plan.schedule;
    const count = (action: string) => steps.filter((step) => step.action === action).length;
    expect(run.hands.flatMap(({ moves }) => moves).length).toBe(count('move'));
    expect(run.hands.flatMap(({ lifts }) => lifts).length).toBe(count('lift'));
    for (const { person, moves } of run.hands) {
      for (const { at } of moves)
        expect(steps).toContainEqual(expect.objectContaining({ person, from: at, action: 'move' }));
    }
    expect(run.lastsSeconds).toBe(Math.max(...steps.map((step) => step.to)));
  });

  it('takes a fresh cloth first and wherever a weaker etch follows', () => {
    const strengthOf = new Map(plan.zones.map((zone) => [zone.letter, zone.strength]));
    const order = ['ground', 'scant', 'light', 'middle', 'dark'];
    for (const { lifts } of run.hands) {
      expect(lifts[0]!.freshCloth).toBe(true);
      for (const [index, lift] of lifts.entries()) {
        if (index === 0) continue;
        const rank = (letter: string) => order.indexOf(strengthOf.get(letter)!);
        expect(lift.freshCloth).toBe(rank(lift.letter) < rank(lifts[index - 1]!.letter));
      }
    }
  });

  it('keeps each strong place out of the weaker ones that it touches', () => {
    expect(run.keepOut).toEqual([
      { strong: 'B', weak: ['A'] },
      { strong: 'C', weak: ['A', 'B'] },
    ]);
  });

  it('has no clock for a plan that cannot be kept, and goes from weak to strong', () => {
    const large = [
      { ...mud, polygonMm: box(10, 10, 370, 230) },
      { ...mud, id: 'water', name: 'water', medium: 'crayon-3', polygonMm: box(10, 250, 370, 230) },
    ];
    const unkept = benchRun(planOf(large, 1));
    expect(unkept.hands).toEqual([]);
    expect(unkept.lastsSeconds).toBeNull();
    expect(unkept.lines[0]!.row.id).toBe('ground');
    expect(unkept.lines.every((line) => line.person === null)).toBe(true);
  });
});

describe('mixtures', () => {
  it('put places of one etch together, and come to what the plan needs in all', () => {
    const plan = planOf([sky, mud, post, smoke]);
    const mixtures = plannedMixtures(plan);
    expect(mixtures.map(({ name, letters }) => [name, letters])).toEqual([
      ['gum alone', ['G', 'A']],
      ['gum and tannic 1:1', ['B']],
      ['tannic solution', ['C']],
    ]);
    const sum = (values: readonly { ml: number }[]) => values.reduce((total, { ml }) => total + ml, 0);
    expect(sum(mixtures)).toBeCloseTo(sum(plan.totals), 9);
    for (const { ml, parts } of mixtures) expect(sum(parts)).toBeCloseTo(ml, 9);
  });
});
