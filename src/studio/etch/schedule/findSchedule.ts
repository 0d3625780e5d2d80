import { seededRandom } from '../../../foundation/random.ts';
import type { ScheduleStep } from '../../../records/etch.ts';
import { scheduleFaults } from './checkSchedule.ts';
import { exactSearch } from './exactSearch.ts';
import { provenImpossible } from './provenImpossible.ts';
import { simulate } from './simulate.ts';
import { type Task, type TouchTimes, touchTimes } from './task.ts';

export type FoundSchedule =
  | { readonly feasible: true; readonly steps: readonly ScheduleStep[] }
  | { readonly feasible: false | 'unknown'; readonly reason: string };

/** Shares of the hold before lifting that are tried, the wanted one first. */
const holds = [1, 0.75, 0.5, 0.25, 0];
/**
 * Orders tried at random after the ordered ones; enough for 12 zones to be answered well within a second. Trying one
 * takes time with the cube of the areas, so beyond those fewer are tried.
 */
const randomOrders = (areas: number) => Math.ceil(60 * Math.min(1, (13 / areas) ** 3));
/** Above so many areas the search through every second rarely ends in time. */
const exactUpTo = 6;

/**
 * Finds a one-stage schedule: everything is laid before anything is lifted; lifting goes light → dark, ground last.
 * The printer's sweep by strength (ground first, strong last) is tried first; only where it can't be kept are
 * other orders searched. `false` only with a proof; otherwise "unknown".
 * @param tasks one per area, ground included; whole seconds.
 */
export function findSchedule(
  tasks: readonly Task[],
  people: 1 | 2,
  touch: TouchTimes = touchTimes,
): FoundSchedule {
  if (tasks.length === 0) return { feasible: true, steps: [] };
  const sweep = sweepOrder(tasks);
  // What one person can keep, two can, one of them looking on.
  const first = tryOrder(tasks, people, touch, sweep) ?? tryOrder(tasks, 1, touch, sweep);
  if (first) return { feasible: true, steps: first };
  const impossible = provenImpossible(tasks, people, touch);
  if (impossible) return { feasible: false, reason: impossible };
  for (const order of otherOrders(tasks, sweep)) {
    const steps = tryOrder(tasks, people, touch, order);
    if (steps) return { feasible: true, steps };
  }
  const alone = people === 2 ? findSchedule(tasks, 1, touch) : null;
  if (alone?.feasible === true) return alone;
  const exact = people === 1 && tasks.length <= exactUpTo ? exactSearch(tasks, touch) : 'unknown';
  if (exact === 'impossible') {
    return {
      feasible: false,
      reason: 'every order of laying, moving and lifting was tried: none can be kept',
    };
  }
  if (exact !== 'unknown') return { feasible: true, steps: exact };
  return {
    feasible: 'unknown',
    reason: 'no order was found that can be kept, and none was proved impossible',
  };
}

/** Ground first, then weak to strong, large before small: the order in which a printer sweeps over the stone. */
export function sweepOrder(tasks: readonly Task[]): number[] {
  return tasks
    .map((_, index) => index)
    .toSorted(
      (a, b) =>
        tasks[a]!.strengthRank - tasks[b]!.strengthRank || tasks[b]!.laySeconds - tasks[a]!.laySeconds,
    );
}

/** Of all holds that can be kept, the one whose contacts come nearest to what is wanted. */
function tryOrder(
  tasks: readonly Task[],
  people: number,
  touch: TouchTimes,
  layOrder: readonly number[],
): readonly ScheduleStep[] | null {
  let best: { steps: readonly ScheduleStep[]; miss: number } | null = null;
  for (const strongAfterWeak of people > 1 ? [true, false] : [false]) {
    for (const hold of holds) {
      const steps = simulate(tasks, people, touch, { layOrder, hold, strongAfterWeak });
      // The judge has the last word: an attempt that slipped past a deadline is no schedule.
      if (!steps || scheduleFaults(steps, tasks, people, touch).length > 0) continue;
      const miss = missOf(steps, tasks);
      if (!best || miss < best.miss) best = { steps, miss };
    }
    if (best) return best.steps;
  }
  return null;
}

/** Sum over zones of how far the contact misses the wanted one, as a share of it. */
function missOf(steps: readonly ScheduleStep[], tasks: readonly Task[]): number {
  return tasks.reduce((sum, task) => {
    if (task.wantedSeconds === null) return sum;
    const own = steps.filter((step) => step.zone === task.zone);
    const contact = own.at(-1)!.to - own[0]!.to;
    return sum + Math.abs(contact - task.wantedSeconds) / task.wantedSeconds;
  }, 0);
}

function* otherOrders(tasks: readonly Task[], sweep: readonly number[]): Generator<number[]> {
  yield sweep.toSorted((a, b) => tasks[b]!.laySeconds - tasks[a]!.laySeconds);
  yield sweep.toReversed();
  yield sweep.toSorted(
    (a, b) => tasks[b]!.gapSeconds - tasks[a]!.gapSeconds || tasks[b]!.laySeconds - tasks[a]!.laySeconds,
  );
  const random = seededRandom(tasks.length);
  for (let round = 0; round < randomOrders(tasks.length); round++) {
    const order = [...sweep];
    for (let index = order.length - 1; index > 0; index--) {
      const other = Math.floor(random() * (index + 1));
      [order[index], order[other]] = [order[other]!, order[index]!];
    }
    yield order;
  }
}
