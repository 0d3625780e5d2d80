import type { ScheduleStep } from '../../../records/etch.ts';
import { liftRank, type Task, type TouchTimes } from './task.ts';

/**
 * Everything that is wrong with a schedule, in words; empty when it can be kept.
 * Written apart from the search, so that it can judge it: it looks only at the finished list of touches.
 */
export function scheduleFaults(
  steps: readonly ScheduleStep[],
  tasks: readonly Task[],
  people: number,
  touch: TouchTimes,
): string[] {
  const faults: string[] = [];
  for (let person = 1; person <= people; person++) faults.push(...doubleWork(steps, person));
  if (steps.some((step) => step.person < 1 || step.person > people)) faults.push('a person who is not there');
  if (steps.some((step) => ![step.from, step.to].every(Number.isInteger))) faults.push('not whole seconds');
  for (const task of tasks) faults.push(...zoneFaults(steps, task, touch));
  const lastLay = Math.max(...steps.filter((step) => step.action === 'lay').map((step) => step.to));
  const lifts = steps.filter((step) => step.action === 'lift').toSorted((a, b) => a.from - b.from);
  if (lifts[0] && lifts[0].from < lastLay) faults.push('lifted before all is laid: that is two stages');
  const rankOf = new Map(tasks.map((task) => [task.zone, liftRank(task)]));
  for (const [index, lift] of lifts.entries()) {
    const before = lifts[index - 1];
    if (before && rankOf.get(before.zone)! > rankOf.get(lift.zone)!) {
      faults.push(`${before.zone} is lifted before the weaker ${lift.zone}`);
    }
  }
  return faults;
}

function doubleWork(steps: readonly ScheduleStep[], person: number): string[] {
  const own = steps.filter((step) => step.person === person).toSorted((a, b) => a.from - b.from);
  return own.flatMap((step, index) => {
    const before = own[index - 1];
    return before && before.to > step.from ? [`person ${person} does two things at ${step.from} s`] : [];
  });
}

function zoneFaults(steps: readonly ScheduleStep[], task: Task, touch: TouchTimes): string[] {
  const own = steps.filter((step) => step.zone === task.zone).toSorted((a, b) => a.from - b.from);
  const faults: string[] = [];
  const lay = own[0];
  const lift = own.at(-1);
  if (own.filter((step) => step.action === 'lay').length !== 1 || lay?.action !== 'lay') {
    return [`${task.zone} is not laid once, first`];
  }
  if (own.filter((step) => step.action === 'lift').length !== 1 || lift?.action !== 'lift') {
    return [`${task.zone} is not lifted once, last`];
  }
  const lasts = { lay: task.laySeconds, move: touch.moveSeconds, lift: touch.liftSeconds };
  for (const [index, step] of own.entries()) {
    if (step.to - step.from !== lasts[step.action]) faults.push(`${task.zone}: ${step.action} lasts wrongly`);
    const before = own[index - 1];
    if (!before) continue;
    if (step.from < before.to) faults.push(`${task.zone} is touched twice at ${step.from} s`);
    if (step.from - before.to > task.gapSeconds)
      faults.push(`${task.zone} lies untouched from ${before.to} s`);
  }
  if (lift.from - lay.to < task.lowSeconds) faults.push(`${task.zone}: contact too short`);
  if (task.highSeconds !== null && lift.to - lay.to > task.highSeconds)
    faults.push(`${task.zone}: contact too long`);
  return faults;
}
