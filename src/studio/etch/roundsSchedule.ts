import type { EtchSchedule, PlanRequest } from '../../records/etch.ts';
import { groundId } from './planAreas.ts';
import { plannedSchedule, type ZoneTimes } from './plannedSchedule.ts';
import { inTwoStages } from './schedule/stages.ts';
import type { Task } from './schedule/task.ts';

/** Between two rounds: the next etch is stirred and a fresh cloth taken up. Our rule, no source. */
const betweenRoundsSeconds = 60;

interface Scheduled {
  readonly schedule: EtchSchedule;
  readonly times: ReadonlyMap<string, ZoneTimes>;
}

/**
 * The schedule of an etch that is laid at once, in two stages, or round by round: each round is found as a whole one would be, and all of it is
 * lifted before the next begins. What no round names, such as the ground, goes with the last. Where one round can't be kept,
 * neither can the whole.
 */
export function roundsSchedule(
  tasks: readonly Task[],
  { rounds = [], stages, people, filmMm }: Pick<PlanRequest, 'rounds' | 'stages' | 'people' | 'filmMm'>,
): Scheduled {
  const parted = rounds.length > 1 ? byRounds(tasks, rounds) : stages === 2 ? inTwoStages(tasks) : null;
  if (parted === null) return plannedSchedule(tasks, people, filmMm);
  const steps: EtchSchedule['steps'][number][] = [];
  const times = new Map<string, ZoneTimes>();
  let begins = 0;
  let untouched: number | null = null;
  for (const round of parted) {
    if (round.length === 0) continue;
    const found = plannedSchedule(round, people, filmMm);
    if (found.schedule.feasible !== true) return found;
    const later = begins;
    steps.push(
      ...found.schedule.steps.map((step) => ({ ...step, from: step.from + later, to: step.to + later })),
    );
    for (const [zone, { layFrom, layTo, endsAt }] of found.times)
      times.set(zone, { layFrom: layFrom + later, layTo: layTo + later, endsAt: endsAt + later });
    untouched = Math.max(untouched ?? 0, found.schedule.longestUntouchedSeconds ?? 0);
    begins = Math.max(begins, ...steps.map(({ to }) => to)) + betweenRoundsSeconds;
  }
  return {
    schedule: {
      feasible: true,
      reason: null,
      skewSeconds: null,
      longestUntouchedSeconds: untouched,
      steps,
      changes: [],
    },
    times,
  };
}

function byRounds(
  tasks: readonly Task[],
  rounds: readonly (readonly string[])[],
): readonly (readonly Task[])[] {
  const named = new Set(rounds.flat());
  return rounds.map((round, index) =>
    tasks.filter(
      ({ zone }) =>
        (round.includes(zone) && zone !== groundId) || (index === rounds.length - 1 && !named.has(zone)),
    ),
  );
}
