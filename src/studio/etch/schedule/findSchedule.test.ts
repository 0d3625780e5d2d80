import { expect, test } from 'vitest';
import { seededRandom } from '../../../foundation/random.ts';
import { checkedByBruteForce } from './bruteForce.testing.ts';
import { scheduleFaults } from './checkSchedule.ts';
import { findSchedule } from './findSchedule.ts';
import { type Task, touchTimes } from './task.ts';

const area = (zone: string, laySeconds: number, strengthRank: number): Task =>
  ({
    zone,
    laySeconds,
    strengthRank,
    lowSeconds: 90,
    wantedSeconds: strengthRank === 0 ? null : strengthRank === 3 ? 150 : 120,
    highSeconds: strengthRank === 4 ? 150 : strengthRank === 3 ? 300 : null,
    gapSeconds: strengthRank > 2 ? 30 : 45,
  }) satisfies Task;

test('the sweep is kept where it can be: ground laid first, light lifted first, ground on longest', () => {
  const tasks = [area('ground', 103, 0), area('light', 27, 2), area('solid', 4, 4)];
  const found = findSchedule(tasks, 1);
  expect(found.feasible).toBe(true);
  if (found.feasible !== true) return;
  expect(scheduleFaults(found.steps, tasks, 1, touchTimes)).toEqual([]);
  expect(found.steps[0]).toMatchObject({ action: 'lay', zone: 'ground', from: 0 });
  expect(found.steps.filter((step) => step.action === 'lift').map((step) => step.zone)).toEqual([
    'light',
    'solid',
    'ground',
  ]);
});

test('five small zones and the ground are always kept by one person, whatever their strengths', () => {
  const strengths = [1, 2, 3, 4];
  for (let code = 0; code < 4 ** 5; code++) {
    const zones = [0, 1, 2, 3, 4].map((place) =>
      area(`z${place}`, 3, strengths[Math.floor(code / 4 ** place) % 4]!),
    );
    const tasks = [area('ground', 120, 0), ...zones];
    const found = findSchedule(tasks, 1);
    expect(found.feasible, JSON.stringify(zones.map((zone) => zone.strengthRank))).toBe(true);
    if (found.feasible === true) expect(scheduleFaults(found.steps, tasks, 1, touchTimes)).toEqual([]);
  }
});

test('two large zones that one person cannot lay without drying are proved impossible, two people keep them', () => {
  const tasks = [area('a', 60, 3), area('b', 60, 3)];
  expect(findSchedule(tasks, 1).feasible).toBe(false);
  const withTwo = findSchedule(tasks, 2);
  expect(withTwo.feasible).toBe(true);
  if (withTwo.feasible === true) expect(scheduleFaults(withTwo.steps, tasks, 2, touchTimes)).toEqual([]);
});

test('what one person can keep, two can, and nobody is given two things at once', () => {
  const seed = 20261126;
  const random = seededRandom(seed);
  for (let round = 0; round < 60; round++) {
    const zones = Array.from({ length: 3 }, (_, index) =>
      area(`z${index}`, 1 + Math.floor(random() * 20), 1 + Math.floor(random() * 4)),
    );
    const tasks = [area('ground', 60 + Math.floor(random() * 400), 0), ...zones];
    if (findSchedule(tasks, 1).feasible !== true) continue;
    const two = findSchedule(tasks, 2);
    expect(two.feasible, `seed ${seed}, round ${round}: ${JSON.stringify(tasks)}`).toBe(true);
    if (two.feasible === true) expect(scheduleFaults(two.steps, tasks, 2, touchTimes)).toEqual([]);
  }
});

test('up to four zones, the answer is the one of a search through every second', () => {
  const seed = 20261125;
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const touch = { moveSeconds: 2, liftSeconds: 2 };
  const counts = { true: 0, false: 0, unknown: 0 };
  for (let round = 0; round < 150; round++) {
    const tasks = Array.from({ length: between(1, 4) }, (_, index): Task => {
      const lowSeconds = between(2, 6);
      return {
        zone: `z${index}`,
        laySeconds: between(1, 7),
        lowSeconds,
        wantedSeconds: null,
        highSeconds: random() < 0.4 ? lowSeconds + between(2, 8) : null,
        gapSeconds: between(3, 8),
        strengthRank: index === 0 ? 0 : between(1, 4),
      };
    });
    const found = findSchedule(tasks, 1, touch);
    counts[`${found.feasible}`]++;
    if (found.feasible === true) expect(scheduleFaults(found.steps, tasks, 1, touch)).toEqual([]);
    if (found.feasible === 'unknown') continue;
    expect(found.feasible, `seed ${seed}, round ${round}: ${JSON.stringify(tasks)}`).toBe(
      checkedByBruteForce(tasks, touch),
    );
  }
  expect(counts.unknown).toBe(0);
  expect(Math.min(counts.true, counts.false)).toBeGreaterThan(20);
});
