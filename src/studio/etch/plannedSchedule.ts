import type { EtchRow, EtchSchedule, PlanRequest } from '../../records/etch.ts';
import { laidRank } from './etchOrder.ts';
import { offeredChanges } from './schedule/changes.ts';
import { findSchedule } from './schedule/findSchedule.ts';
import type { Task } from './schedule/task.ts';

/** When a zone is laid and lifted, in seconds from the first touch. */
export interface ZoneTimes {
  readonly layFrom: number;
  readonly layTo: number;
  readonly endsAt: number;
}

/**
 * An area as the schedule sees it; none where there is no rule or nothing to lay.
 * A zone that is meant to stay bare is laid and lifted with the ground's etch, but counts as the weakest work.
 * @param request `layMm2PerSecond` is how fast one brush lays, above 0; about 1,500 from memory.
 */
export function taskOf(
  area: { readonly id: string; readonly areaCm2: number; readonly chosen: { readonly row: EtchRow | null } },
  request: Pick<PlanRequest, 'layMm2PerSecond' | 'filmMm' | 'gapFilmMm'>,
): Task[] {
  const { row } = area.chosen;
  if (!row || area.areaCm2 <= 0) return [];
  return [
    {
      zone: area.id,
      laySeconds: Math.max(1, Math.ceil((area.areaCm2 * 100) / request.layMm2PerSecond - 1e-9)),
      lowSeconds: row.contactSeconds.low,
      wantedSeconds: row.contactSeconds.wanted,
      highSeconds: row.contactSeconds.high,
      gapSeconds: gapOf(row, request),
      strengthRank: laidRank(row.strength),
    },
  ];
}

/** How long a row's etch may lie untouched in a film of this depth, whole seconds. */
export function gapOf(
  { moveWithinSeconds }: EtchRow,
  { filmMm, gapFilmMm }: Pick<PlanRequest, 'filmMm' | 'gapFilmMm'>,
): number {
  return gapFilmMm == null || filmMm <= gapFilmMm
    ? moveWithinSeconds
    : Math.floor((moveWithinSeconds * filmMm) / gapFilmMm);
}

/** Finds the schedule and reads off it what the plan shows; where none can be kept, what could be changed. */
export function plannedSchedule(
  tasks: readonly Task[],
  people: 1 | 2,
  filmMm: number,
): { schedule: EtchSchedule; times: ReadonlyMap<string, ZoneTimes> } {
  const found = findSchedule(tasks, people);
  if (found.feasible !== true) {
    return {
      schedule: {
        feasible: found.feasible,
        reason: found.reason,
        skewSeconds: null,
        longestUntouchedSeconds: null,
        steps: [],
        changes: offeredChanges(tasks, people, filmMm),
      },
      times: new Map(),
    };
  }
  const times = new Map(
    tasks.map((task) => {
      const own = found.steps.filter((step) => step.zone === task.zone);
      return [task.zone, { layFrom: own[0]!.from, layTo: own[0]!.to, endsAt: own.at(-1)!.to }] as const;
    }),
  );
  const ends = [...times.values()].map((time) => time.endsAt);
  const untouched = tasks.flatMap((task) => {
    const own = found.steps.filter((step) => step.zone === task.zone);
    return own.slice(1).map((step, index) => step.from - own[index]!.to);
  });
  return {
    schedule: {
      feasible: true,
      reason: null,
      skewSeconds: ends.length > 0 ? Math.max(...ends) - Math.min(...ends) : null,
      longestUntouchedSeconds: untouched.length > 0 ? Math.max(...untouched) : null,
      steps: found.steps,
      changes: [],
    },
    times,
  };
}
