import { expect, test } from 'vitest';
import type { ScheduleStep } from '../../../records/etch.ts';
import { scheduleFaults } from './checkSchedule.ts';
import { type Task, touchTimes } from './task.ts';

const task = (zone: string, strengthRank: number, more: Partial<Task> = {}): Task => ({
  zone,
  strengthRank,
  laySeconds: 4,
  lowSeconds: 20,
  wantedSeconds: null,
  highSeconds: 40,
  gapSeconds: 30,
  ...more,
});
const tasks = [task('ground', 0, { highSeconds: null }), task('light', 2), task('dark', 4)];

const step = (
  action: ScheduleStep['action'],
  zone: string,
  from: number,
  person: 1 | 2 = 1,
): ScheduleStep => ({
  action,
  zone,
  person,
  from,
  to: from + { lay: 4, move: touchTimes.moveSeconds, lift: touchTimes.liftSeconds }[action],
});
const kept = [
  step('lay', 'ground', 0),
  step('lay', 'light', 4),
  step('lay', 'dark', 8),
  step('move', 'ground', 25),
  step('lift', 'light', 30),
  step('lift', 'dark', 38),
  step('lift', 'ground', 50),
];
const faults = (steps: readonly ScheduleStep[], people = 1, judged: readonly Task[] = tasks) =>
  scheduleFaults(steps, judged, people, touchTimes);
/** The same schedule with one of its steps another. */
const but = (index: number, ...instead: readonly ScheduleStep[]) => kept.toSpliced(index, 1, ...instead);

test('a schedule that can be kept has no fault, to the last second of each bound', () => {
  expect(faults(kept)).toEqual([]);
  // Lifted from 38 to 43, laid at 12: 31 s of contact, 26 s until it is touched again.
  const exact = (more: Partial<Task>) => [tasks[0]!, tasks[1]!, task('dark', 4, more)];
  expect(faults(kept, 1, exact({ gapSeconds: 26, lowSeconds: 26, highSeconds: 31 }))).toEqual([]);
  expect(faults(kept, 1, exact({ gapSeconds: 25 }))).toEqual(['dark lies untouched from 12 s']);
  expect(faults(kept, 1, exact({ lowSeconds: 27 }))).toEqual(['dark: contact too short']);
  expect(faults(kept, 1, exact({ highSeconds: 30 }))).toEqual(['dark: contact too long']);
});

test('hands do one thing at a time, and are there', () => {
  expect(faults(but(3, step('move', 'ground', 28)))).toEqual(['person 1 does two things at 30 s']);
  expect(faults(but(3, step('move', 'ground', 28, 2)), 2)).toEqual([]);
  expect(faults(but(3, step('move', 'ground', 25, 2)))).toEqual(['a person who is not there']);
  const half = { ...step('move', 'ground', 25), from: 25.5, to: 28.5 };
  expect(faults(but(3, half))).toEqual(['not whole seconds']);
});

test('each area is laid once, first, and lifted once, last, each touch taking its time', () => {
  expect(faults(kept.toSpliced(0, 1))).toEqual(['ground is not laid once, first']);
  expect(faults(but(3, step('lay', 'ground', 25)))).toEqual(['ground is not laid once, first']);
  expect(faults(kept.toSpliced(6, 1))).toEqual(['ground is not lifted once, last']);
  expect(faults([...kept, step('move', 'light', 60)])).toEqual(['light is not lifted once, last']);
  expect(faults(but(3, { ...step('move', 'ground', 25), to: 27 }))).toEqual(['ground: move lasts wrongly']);
  expect(faults(but(3, step('move', 'ground', 25), step('move', 'ground', 26, 2)), 2)).toEqual([
    'ground is touched twice at 26 s',
  ]);
});

test('nothing is lifted before all is laid, and the weaker before the stronger, the ground last', () => {
  const late = [
    step('lay', 'light', 0),
    step('lift', 'light', 24),
    step('lay', 'dark', 29),
    step('lift', 'dark', 53),
  ];
  expect(faults(late, 1, tasks.slice(1))).toEqual(['lifted before all is laid: that is two stages']);
  expect(faults(kept.toSpliced(4, 2, step('lift', 'dark', 32), step('lift', 'light', 38)))).toEqual([
    'dark is lifted before the weaker light',
  ]);
  const groundFirst = kept.toSpliced(5, 2, step('lift', 'ground', 36), step('lift', 'dark', 42));
  expect(faults(groundFirst, 1, [tasks[0]!, tasks[1]!, task('dark', 4, { gapSeconds: 40 })])).toEqual([
    'ground is lifted before the weaker dark',
  ]);
});
