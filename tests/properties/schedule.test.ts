import fc from 'fast-check';
import { expect } from 'vitest';
import type { ScheduleStep } from '../../src/records/etch.ts';
import { scheduleFaults } from '../../src/studio/etch/schedule/checkSchedule.ts';
import { findSchedule } from '../../src/studio/etch/schedule/findSchedule.ts';
import { type Task, touchTimes } from '../../src/studio/etch/schedule/task.ts';
import { holds } from './holds.ts';

const between = (min: number, max: number) => fc.integer({ min, max });

const tasks: fc.Arbitrary<Task[]> = fc
  .array(
    fc.record({
      laySeconds: between(1, 40),
      lowSeconds: between(30, 120),
      spare: fc.option(between(20, 200)),
      gapSeconds: between(20, 60),
      strengthRank: between(0, 4),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((drawn) =>
    drawn.map(({ spare, ...task }, i) => ({
      ...task,
      zone: `z${i}`,
      wantedSeconds: null,
      highSeconds: spare === null ? null : task.lowSeconds + spare,
    })),
  );

/** Played second by second, without the project's own judge: who does what, and since when each zone lies still. */
function playThrough(steps: readonly ScheduleStep[], all: readonly Task[], people: number): void {
  const busy = new Set<string>();
  for (const step of steps) {
    expect(step.person).toBeGreaterThanOrEqual(1);
    expect(step.person).toBeLessThanOrEqual(people);
    for (let second = step.from; second < step.to; second++) {
      const hands = `${step.person}@${second}`;
      expect(busy.has(hands), `person ${step.person} does two things at ${second} s`).toBe(false);
      busy.add(hands);
    }
  }
  for (const task of all) {
    const own = steps.filter(({ zone }) => zone === task.zone).toSorted((a, b) => a.from - b.from);
    expect(own[0]!.action).toBe('lay');
    expect(own.at(-1)!.action).toBe('lift');
    for (const [i, step] of own.entries()) {
      if (i > 0)
        expect(step.from - own[i - 1]!.to, `${task.zone} lies still`).toBeLessThanOrEqual(task.gapSeconds);
    }
    const contact = own.at(-1)!.from - own[0]!.to;
    expect(contact).toBeGreaterThanOrEqual(task.lowSeconds);
    if (task.highSeconds !== null) expect(own.at(-1)!.to - own[0]!.to).toBeLessThanOrEqual(task.highSeconds);
  }
}

for (const people of [1, 2] as const) {
  holds(
    `a schedule for ${people} keeps every gap and contact, and nobody does two things at once`,
    fc.property(tasks, (all) => {
      const found = findSchedule(all, people);
      if (found.feasible !== true) return;
      playThrough(found.steps, all, people);
      expect(scheduleFaults(found.steps, all, people, touchTimes)).toEqual([]);
    }),
    40,
  );
}

holds(
  'the order in which zones are named never turns a kept schedule into an impossible one, nor do more hands',
  fc.property(tasks, (all) => {
    const answer = findSchedule(all, 1).feasible;
    const otherWay = findSchedule(all.toReversed(), 1).feasible;
    if (answer !== 'unknown' && otherWay !== 'unknown') expect(otherWay).toBe(answer);
    if (answer === true) expect(findSchedule(all, 2).feasible).not.toBe(false);
  }),
  15,
);
