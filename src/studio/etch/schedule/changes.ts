import type { ScheduleChange } from '../../../records/etch.ts';
import { type FoundSchedule, findSchedule } from './findSchedule.ts';
import { inTwoStages } from './stages.ts';
import type { Task } from './task.ts';

/** A film deeper than this runs off a level stone: common practice, no source. */
export const deepestFilmMm = 0.8;

/**
 * What could be changed so that the plan can be kept, each tried out and its effect said, cheapest first.
 * That a deeper film may lie untouched longer in proportion is our rule, without source; the sentence says so.
 */
export function offeredChanges(tasks: readonly Task[], people: 1 | 2, filmMm: number): ScheduleChange[] {
  return [
    ...mergedAreas(tasks, people),
    ...deeperFilm(tasks, people, filmMm),
    ...secondPerson(tasks, people),
    ...twoStages(tasks, people),
  ];
}

function secondPerson(tasks: readonly Task[], people: 1 | 2): ScheduleChange[] {
  if (people === 2) return [];
  return [{ change: 'second-person', ...judged(findSchedule(tasks, 2), 'a second pair of hands') }];
}

function mergedAreas(tasks: readonly Task[], people: 1 | 2): ScheduleChange[] {
  const merged = new Map<string, Task>();
  for (const task of tasks) {
    const key = [task.strengthRank, task.lowSeconds, task.highSeconds, task.gapSeconds].join();
    const before = merged.get(key);
    merged.set(key, before ? { ...before, laySeconds: before.laySeconds + task.laySeconds } : task);
  }
  if (merged.size === tasks.length) return [];
  const what = `laying and moving zones of one etch as one area (${tasks.length} areas become ${merged.size})`;
  return [{ change: 'merge', ...judged(findSchedule([...merged.values()], people), what) }];
}

function deeperFilm(tasks: readonly Task[], people: 1 | 2, filmMm: number): ScheduleChange[] {
  if (filmMm >= deepestFilmMm) return [];
  const factor = deepestFilmMm / filmMm;
  const deeper = tasks.map((task) => ({ ...task, gapSeconds: Math.floor(task.gapSeconds * factor) }));
  const what = `a film of ${deepestFilmMm} mm, if it may lie untouched longer in proportion (our rule, no source; watch for drying)`;
  return [{ change: 'deeper-film', ...judged(findSchedule(deeper, people), what) }];
}

function twoStages(tasks: readonly Task[], people: 1 | 2): ScheduleChange[] {
  const parted = inTwoStages(tasks);
  if (parted === null) return [];
  const stages = parted.map((stage) => findSchedule(stage, people));
  const worst =
    stages.find((stage) => stage.feasible === false) ?? stages.find((stage) => stage.feasible !== true);
  const what = 'two stages: the ground and the weaker etches first, and the strongest once those are lifted';
  return [{ change: 'two-stages', ...judged(worst ?? stages[0]!, what) }];
}

function judged(found: FoundSchedule, what: string): Pick<ScheduleChange, 'feasible' | 'effect'> {
  switch (found.feasible) {
    case true:
      return { feasible: true, effect: `With ${what}, the plan can be kept.` };
    case false:
      return { feasible: false, effect: `With ${what}, it still can't be kept: ${found.reason}.` };
    case 'unknown':
      return { feasible: 'unknown', effect: `With ${what}, it isn't known whether the plan can be kept.` };
    default:
      return found satisfies never;
  }
}
