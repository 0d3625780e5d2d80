import type { EtchPlan, ScheduleStep } from '../../records/etch.ts';
import { laidRows } from '../../studio/etch/laidRows.ts';

/** One touch of a hand; seconds from the first touch. */
export interface HandTouch {
  readonly from: number;
  readonly to: number;
  readonly action: ScheduleStep['action'];
  readonly letter: string;
}

/** What begins at one moment: a touch for each person, in the order of the persons; null where that one goes on. */
export interface EtchMoment {
  readonly at: number;
  readonly touches: readonly (HandTouch | null)[];
}

/** One minute of an etch, and how the stone lies as it ends. */
export interface EtchMinute {
  /** Seconds from the first touch, whole minutes. */
  readonly from: number;
  /** Whole minutes, or when the last hand lifts. */
  readonly to: number;
  readonly moments: readonly EtchMoment[];
  /** Ids of what is laid and not lifted yet as it ends. */
  readonly wet: ReadonlySet<string>;
}

export interface EtchMinutes {
  readonly persons: readonly number[];
  readonly minutes: readonly EtchMinute[];
}

/** A plan's schedule minute by minute, as it is read down a page of a log; null where it has none. */
export function etchMinutes(plan: EtchPlan): EtchMinutes | null {
  const { steps } = plan.schedule;
  if (steps.length === 0) return null;
  const rows = laidRows(plan).map(({ row }) => row);
  const letters = new Map(rows.map(({ id, letter }) => [id, letter]));
  const persons = [...new Set(steps.map(({ person }) => person))].toSorted((a, b) => a - b);
  const end = Math.max(...steps.map(({ to }) => to));
  const minutes = Array.from({ length: Math.ceil(end / 60) }, (_, minute): EtchMinute => {
    const from = minute * 60;
    const to = Math.min(from + 60, end);
    const begun = steps.filter((step) => step.from >= from && step.from < from + 60);
    const times = [...new Set(begun.map((step) => step.from))].toSorted((a, b) => a - b);
    return {
      from,
      to,
      moments: times.map((at) => ({
        at,
        touches: persons.map((person) => {
          const step = begun.find((one) => one.person === person && one.from === at);
          return step
            ? { from: at, to: step.to, action: step.action, letter: letters.get(step.zone) ?? step.zone }
            : null;
        }),
      })),
      wet: new Set(
        rows.flatMap(({ id, layFrom, endsAt }) =>
          layFrom !== null && endsAt !== null && layFrom < to && endsAt > to ? [id] : [],
        ),
      ),
    };
  });
  return { persons, minutes };
}
