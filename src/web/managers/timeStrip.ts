import type { EtchPlan, PlannedPart, PlannedZone, ScheduleStep } from '../../records/etch.ts';

/** One touch on a person's strip; seconds from the first touch. */
export interface StripTouch {
  readonly from: number;
  readonly to: number;
  readonly action: ScheduleStep['action'];
  readonly letter: string;
}

/** How long one zone lies under its etch. */
export interface StripZone {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly layFrom: number;
  readonly layTo: number;
  readonly endsAt: number;
}

/** A schedule as strips of time: what each person does, and how long each zone lies wet. */
export interface TimeStrip {
  /** Whole minutes that hold all of it, in seconds. */
  readonly lengthSeconds: number;
  readonly persons: readonly { readonly person: number; readonly touches: readonly StripTouch[] }[];
  /** In the order in which they are laid. */
  readonly zones: readonly StripZone[];
}

/** The strips of a plan's schedule; null where it has none. */
export function timeStrip(plan: EtchPlan): TimeStrip | null {
  const { steps } = plan.schedule;
  if (steps.length === 0) return null;
  const laid = laidRows(plan);
  const letters = new Map(laid.map((row) => [row.id, row.letter]));
  const persons = [...new Set(steps.map(({ person }) => person))].toSorted((a, b) => a - b);
  const end = Math.max(...steps.map(({ to }) => to));
  return {
    lengthSeconds: Math.ceil(end / 60) * 60,
    persons: persons.map((person) => ({
      person,
      touches: steps
        .filter((step) => step.person === person)
        .toSorted((a, b) => a.from - b.from)
        .map(({ from, to, action, zone }) => ({ from, to, action, letter: letters.get(zone) ?? zone })),
    })),
    zones: laid
      .flatMap(({ id, letter, name, layFrom, layTo, endsAt }) =>
        layFrom === null || layTo === null || endsAt === null
          ? []
          : [{ id, letter, name, layFrom, layTo, endsAt }],
      )
      .toSorted((a, b) => a.layFrom - b.layFrom),
  };
}

/** What is laid by itself, with its name. */
export type LaidRow = (PlannedZone | PlannedPart) & { readonly name: string };

/** What of a plan is laid by itself: a split wash's parts in place of the wash. */
export function laidRows(plan: EtchPlan): readonly LaidRow[] {
  return plan.zones.flatMap((row): readonly LaidRow[] =>
    row.parts.length > 0
      ? row.parts.map((part) => ({ ...part, name: `${row.name}, ${part.strength}` }))
      : [row],
  );
}
