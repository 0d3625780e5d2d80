import type { ScheduleStep } from '../../../records/etch.ts';
import { liftRank, type Task, type TouchTimes } from './task.ts';

const mostStates = 60_000;

interface Node {
  readonly now: number;
  /** Since the last touch, by area; −1 not laid, −2 lifted. */
  readonly ages: readonly number[];
  /** Since the end of laying, by area, as far as it still matters. */
  readonly contacts: readonly number[];
  readonly step: ScheduleStep | null;
  readonly before: Node | null;
}

const notLaid = -1;
const isLifted = -2;

/**
 * Depth-first search over everything one person can do from second to second (lay, move, lift, wait one second),
 * remembering states already seen. Complete if it ends; gives up after a bounded number of states.
 * @returns the steps, 'impossible' after a complete search, or 'unknown'.
 */
export function exactSearch(
  tasks: readonly Task[],
  touch: TouchTimes,
): readonly ScheduleStep[] | 'impossible' | 'unknown' {
  const seen = new Set<string>();
  const stack: Node[] = [
    { now: 0, ages: tasks.map(() => notLaid), contacts: tasks.map(() => 0), step: null, before: null },
  ];
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (node.ages.every((age) => age === isLifted)) return stepsTo(node);
    if (seen.size > mostStates) return 'unknown';
    for (const next of successors(node, tasks, touch)) {
      const key = `${next.ages.join()};${next.contacts.join()}`;
      if (seen.has(key)) continue;
      seen.add(key);
      stack.push(next);
    }
  }
  return 'impossible';
}

/** In rising order of promise, since the last is looked at first. */
function successors(node: Node, tasks: readonly Task[], touch: TouchTimes): Node[] {
  const laying = node.ages.some((age) => age === notLaid);
  const found: Node[] = [];
  const push = (seconds: number, index: number, action: ScheduleStep['action'] | null) => {
    const next = advance(node, tasks, seconds, index, action);
    if (next) found.push(next);
  };
  if (!laying) push(1, -1, null);
  const byAge = tasks.map((_, index) => index).toSorted((a, b) => node.ages[a]! - node.ages[b]!);
  for (const index of byAge) if (node.ages[index]! >= 0) push(touch.moveSeconds, index, 'move');
  for (const [index, task] of tasks.entries()) {
    if (node.ages[index] === notLaid) push(task.laySeconds, index, 'lay');
  }
  if (!laying) {
    const wet = tasks.filter((_, index) => node.ages[index]! >= 0);
    const rank = Math.min(...wet.map(liftRank));
    for (const [index, task] of tasks.entries()) {
      const ready =
        node.ages[index]! >= 0 && liftRank(task) === rank && node.contacts[index]! >= task.lowSeconds;
      if (ready) push(touch.liftSeconds, index, 'lift');
    }
  }
  return found;
}

function advance(
  node: Node,
  tasks: readonly Task[],
  seconds: number,
  index: number,
  action: ScheduleStep['action'] | null,
): Node | null {
  const ages = [...node.ages];
  const contacts = [...node.contacts];
  for (const [other, task] of tasks.entries()) {
    if (ages[other]! < 0 && other !== index) continue;
    if (other === index) {
      if (action === 'lift' && task.highSeconds !== null && contacts[other]! + seconds > task.highSeconds)
        return null;
      ages[other] = action === 'lift' ? isLifted : 0;
    } else {
      ages[other]! += seconds;
      if (ages[other]! > task.gapSeconds) return null;
    }
    if (action === 'lay' && other === index) contacts[other] = 0;
    else contacts[other] = cappedContact(contacts[other]! + seconds, task);
    if (ages[other] === isLifted) contacts[other] = 0;
    else if (task.highSeconds !== null && contacts[other]! > task.highSeconds) return null;
  }
  const step: ScheduleStep | null =
    action === null
      ? null
      : { person: 1, from: node.now, to: node.now + seconds, action, zone: tasks[index]!.zone };
  return { now: node.now + seconds, ages, contacts, step, before: node };
}

/** Without a longest contact, only whether the shortest is reached matters: fewer states to remember. */
function cappedContact(contact: number, task: Task): number {
  return task.highSeconds === null ? Math.min(contact, task.lowSeconds) : contact;
}

function stepsTo(node: Node): ScheduleStep[] {
  const steps: ScheduleStep[] = [];
  for (let at: Node | null = node; at; at = at.before) if (at.step) steps.push(at.step);
  return steps.reverse();
}
