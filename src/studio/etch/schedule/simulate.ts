import type { ScheduleStep } from '../../../records/etch.ts';
import { liftRank, type Task, type TouchTimes } from './task.ts';

/** How one attempt is to go: the order of laying, and how long to hold before the first lift. */
export interface Attempt {
  readonly layOrder: readonly number[];
  /** Share of the way from the earliest to the wanted first lift, 0..1. */
  readonly hold: number;
  /** Nobody lays an etch with a longest contact while one without is still to be laid: its clock would run too long. */
  readonly strongAfterWeak: boolean;
}

interface Area {
  readonly task: Task;
  /** End of the last touch; Infinity before laying. */
  touchedTo: number;
  layTo: number;
  lifted: boolean;
}

interface State {
  readonly areas: Area[];
  /** When each person is free again. */
  readonly free: number[];
  readonly steps: ScheduleStep[];
  readonly touch: TouchTimes;
}

/**
 * Plays one attempt through, person by person, always making sure that whoever takes up a longer task
 * can be back before any wet zone dries.
 * @returns every touch in whole seconds from the first; null where this attempt can't be kept.
 */
export function simulate(
  tasks: readonly Task[],
  people: number,
  touch: TouchTimes,
  attempt: Attempt,
): ScheduleStep[] | null {
  const state: State = {
    areas: tasks.map((task) => ({
      task,
      touchedTo: Number.POSITIVE_INFINITY,
      layTo: Number.NaN,
      lifted: false,
    })),
    free: Array.from({ length: people }, () => 0),
    steps: [],
    touch,
  };
  if (!layAll(state, attempt)) return null;
  if (!liftAll(state, firstLiftAt(state, attempt.hold))) return null;
  return state.steps.toSorted((a, b) => a.from - b.from || a.person - b.person);
}

function layAll(state: State, attempt: Attempt): boolean {
  const waiting = [...attempt.layOrder];
  let idleMoves = 0;
  while (waiting.length > 0) {
    const person = earliestFree(state);
    const now = state.free[person]!;
    const weakDoneAt = attempt.strongAfterWeak ? layingOfWeakEndsAt(state) : 0;
    const choice = waiting.findIndex((index) => {
      const area = state.areas[index]!;
      if (area.task.highSeconds !== null && weakDoneAt > now) return false;
      return canLeaveFor(state, person, area.task.laySeconds, area);
    });
    const wet = wetAreas(state);
    if (choice < 0 && weakDoneAt > now && !needsTouch(state, now)) {
      state.free[person] = now + 1;
      continue;
    }
    // The order given is kept unless it can't be: only after a full round of moves is another zone taken.
    if (choice === 0 || (choice > 0 && idleMoves > wet.length)) {
      const area = state.areas[waiting.splice(choice, 1)[0]!]!;
      act(state, person, now, 'lay', area, area.task.laySeconds);
      area.layTo = area.touchedTo;
      idleMoves = 0;
      continue;
    }
    if (idleMoves > 2 * wet.length + 2) return false;
    if (!moveMostUrgent(state, person, now)) return false;
    idleMoves++;
  }
  return true;
}

/** When the last etch without a longest contact is laid, as far as is known: Infinity while one waits. */
function layingOfWeakEndsAt(state: State): number {
  const weak = state.areas.filter((area) => area.task.highSeconds === null);
  return Math.max(
    0,
    ...weak.map((area) => (Number.isNaN(area.layTo) ? Number.POSITIVE_INFINITY : area.layTo)),
  );
}

/** Whether some wet zone should be moved now rather than waited for. */
function needsTouch(state: State, now: number): boolean {
  const urgent = mostUrgent(state, now);
  if (!urgent) return false;
  const round = wetAreas(state).length * state.touch.moveSeconds + state.touch.liftSeconds;
  return deadline(urgent) - now <= Math.max(urgent.task.gapSeconds / 2, round);
}

/** When lifting should begin, so that contacts come close to what is wanted. */
function firstLiftAt(state: State, hold: number): number {
  const inOrder = state.areas.toSorted((a, b) => liftRank(a.task) - liftRank(b.task));
  let earliest = 0;
  let wanted = 0;
  for (const [position, area] of inOrder.entries()) {
    const offset = Math.floor((position * state.touch.liftSeconds) / state.free.length);
    earliest = Math.max(earliest, area.layTo + area.task.lowSeconds - offset);
    const wish = area.task.wantedSeconds ?? area.task.lowSeconds;
    wanted = Math.max(wanted, area.layTo + wish - state.touch.liftSeconds - offset);
  }
  return Math.round(earliest + (Math.max(wanted, earliest) - earliest) * hold);
}

function liftAll(state: State, notBefore: number): boolean {
  while (state.areas.some((area) => !area.lifted)) {
    const person = earliestFree(state);
    const now = state.free[person]!;
    if (state.areas.some((area) => !area.lifted && isLate(area, now, state.touch))) return false;
    const next = now >= notBefore ? nextToLift(state, now) : null;
    if (next && canLeaveFor(state, person, state.touch.liftSeconds, next)) {
      act(state, person, now, 'lift', next, state.touch.liftSeconds);
      next.lifted = true;
      continue;
    }
    if (needsTouch(state, now)) {
      if (!moveMostUrgent(state, person, now)) return false;
    } else {
      state.free[person] = now + 1;
    }
  }
  return true;
}

function isLate(area: Area, now: number, touch: TouchTimes): boolean {
  const { highSeconds } = area.task;
  return highSeconds !== null && now + touch.liftSeconds > area.layTo + highSeconds;
}

function nextToLift(state: State, now: number): Area | null {
  const wet = state.areas.filter((area) => !area.lifted);
  const rank = Math.min(...wet.map((area) => liftRank(area.task)));
  const ready = wet.filter(
    (area) =>
      liftRank(area.task) === rank && area.touchedTo <= now && now - area.layTo >= area.task.lowSeconds,
  );
  return ready.toSorted((a, b) => deadline(a) - deadline(b))[0] ?? null;
}

function moveMostUrgent(state: State, person: number, now: number): boolean {
  const area = mostUrgent(state, now);
  if (!area) {
    // Everything wet is under the other person's hands: wait for them.
    if (wetAreas(state).length === 0) return false;
    state.free[person] = now + 1;
    return true;
  }
  if (deadline(area) < now) return false;
  act(state, person, now, 'move', area, state.touch.moveSeconds);
  return true;
}

function mostUrgent(state: State, now: number): Area | null {
  const free = wetAreas(state).filter((area) => area.touchedTo <= now);
  return free.toSorted((a, b) => deadline(a) - deadline(b))[0] ?? null;
}

/** Whether, while this person is busy for so long, every wet zone can still be moved in time afterwards or by others. */
function canLeaveFor(state: State, person: number, seconds: number, own: Area): boolean {
  const free = [...state.free];
  const now = free[person]!;
  free[person] = now + seconds;
  const others = wetAreas(state)
    .filter((area) => area !== own)
    .toSorted((a, b) => deadline(a) - deadline(b));
  for (const area of others) {
    const server = free.indexOf(Math.min(...free));
    const start = Math.max(free[server]!, area.touchedTo);
    if (start > deadline(area)) return false;
    free[server] = start + state.touch.moveSeconds;
  }
  return true;
}

function act(
  state: State,
  person: number,
  from: number,
  action: ScheduleStep['action'],
  area: Area,
  seconds: number,
): void {
  state.steps.push({ person: person + 1, from, to: from + seconds, action, zone: area.task.zone });
  state.free[person] = from + seconds;
  area.touchedTo = from + seconds;
}

function wetAreas(state: State): Area[] {
  return state.areas.filter((area) => Number.isFinite(area.touchedTo) && !area.lifted);
}

function deadline(area: Area): number {
  return area.touchedTo + area.task.gapSeconds;
}

function earliestFree(state: State): number {
  return state.free.indexOf(Math.min(...state.free));
}
