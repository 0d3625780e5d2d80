import type { EtchPlan, ScheduleStep } from '../../records/etch.ts';
import { inOrderLaid, laidRank } from './etchOrder.ts';
import { type LaidRow, laidRows } from './laidRows.ts';

/** One line of the order in which the etch is laid. */
export interface BenchLine extends LaidRow {
  /** Who lays it, from 1; null without a schedule. */
  readonly person: number | null;
  /** When lifting it begins, seconds from the first touch; null likewise. */
  readonly liftAt: number | null;
}

/** A touch by the clock, seconds from the first one. */
export interface BenchTouch {
  readonly at: number;
  readonly letter: string;
}

export interface BenchLift extends BenchTouch {
  /** True where a fresh cloth is taken up first: at a person's first lift, and wherever a weaker etch follows. */
  readonly freshCloth: boolean;
}

/** What one pair of hands does after laying. */
export interface BenchHands {
  readonly person: number;
  readonly moves: readonly BenchTouch[];
  readonly lifts: readonly BenchLift[];
}

/** A plan told as the bench needs it. */
export interface BenchRun {
  /** By the clock; without a schedule in the order of laying that `inOrderLaid` knows. */
  readonly lines: readonly BenchLine[];
  /** Empty without a schedule. */
  readonly hands: readonly BenchHands[];
  /** Letters in the order of buffing, for the rounds after the first. */
  readonly buffLetters: readonly string[];
  /** Which letters must be kept out of which weaker ones nearby. */
  readonly keepOut: readonly { readonly strong: string; readonly weak: readonly string[] }[];
  /** Seconds from the first touch to the last; null without a schedule. */
  readonly lastsSeconds: number | null;
}

/** Tells a plan as a run at the bench: who lays what when, the moves by the clock, the lifts with their cloths. */
export function benchRun(plan: EtchPlan): BenchRun {
  const { steps } = plan.schedule;
  const rows = laidRows(plan);
  const byId = new Map(rows.map((line) => [line.row.id, line]));
  const people = [...new Set(steps.map((step) => step.person))].sort((a, b) => a - b);
  return {
    lines: inOrderLaid(rows, ({ row }) => row)
      .toSorted((a, b) => layFrom(a) - layFrom(b))
      .map((line) => ({
        ...line,
        person: touchOf(line.row.id, 'lay')?.person ?? null,
        liftAt: touchOf(line.row.id, 'lift')?.from ?? null,
      })),
    hands: people.map((person) => ({
      person,
      moves: touches(steps, person, 'move').map(({ at, line }) => ({ at, letter: line.row.letter })),
      lifts: touches(steps, person, 'lift').map(({ at, line }, index, all) => ({
        at,
        letter: line.row.letter,
        freshCloth: index === 0 || rank(line) < rank(all[index - 1]!.line),
      })),
    })),
    buffLetters: plan.buffOrder.flatMap((id) => byId.get(id)?.row.letter ?? []),
    keepOut: keptOut(plan, byId),
    lastsSeconds: steps.length > 0 ? Math.max(...steps.map((step) => step.to)) : null,
  };

  function touchOf(zone: string, action: ScheduleStep['action']) {
    return steps.find((step) => step.action === action && step.zone === zone);
  }

  function touches(all: readonly ScheduleStep[], person: number, action: ScheduleStep['action']) {
    return all
      .filter((step) => step.person === person && step.action === action)
      .toSorted((a, b) => a.from - b.from)
      .flatMap((step) => {
        const line = byId.get(step.zone);
        return line ? [{ at: step.from, line }] : [];
      });
  }
}

function keptOut(plan: EtchPlan, byId: ReadonlyMap<string, LaidRow>): BenchRun['keepOut'] {
  const weakOf = new Map<string, Set<string>>();
  for (const { a, b } of plan.neighbours) {
    const [first, second] = [byId.get(a), byId.get(b)];
    if (!first || !second) continue;
    const [strong, weak] = rank(first) > rank(second) ? [first, second] : [second, first];
    weakOf.set(strong.row.letter, (weakOf.get(strong.row.letter) ?? new Set()).add(weak.row.letter));
  }
  return [...weakOf].map(([strong, weak]) => ({ strong, weak: [...weak] }));
}

/** When it is laid by the clock; what no clock names comes after, in the order that it was in. */
function layFrom({ row }: LaidRow): number {
  return row.layFrom ?? Number.MAX_VALUE;
}

function rank({ row }: LaidRow): number {
  return laidRank(row.strength);
}
