import type { RunState } from '../../../records/bench.ts';
import type { EtchPlan, ScheduleStep } from '../../../records/etch.ts';
import type { LineStage, RunEventKind } from '../../../records/run.ts';
import { buffingRounds } from '../../../studio/etch/endSigns.ts';

/** What one touch of a target logs. */
export interface BenchTap {
  readonly kind: RunEventKind;
  readonly payload: unknown;
  /** What the target says. */
  readonly words: string;
  /** The place that it is about; null: the stone as a whole. */
  readonly place: string | null;
}

export interface BenchTaps {
  /** What the space bar, the pedal and the large target log; null where nothing is left to log. */
  readonly first: BenchTap | null;
  readonly others: readonly BenchTap[];
}

/** A tap that comes this long after the next move was called still counts for the one before, seconds: our rule. */
const graceSeconds = 1.5;

interface Asked {
  readonly plan: EtchPlan;
  readonly state: Pick<RunState, 'contacts' | 'buffedRounds' | 'moves' | 'at'>;
  readonly person: number;
  readonly letterOf: (place: string) => string;
}

/** What can be logged while the etch lies: what the schedule asks now comes first. */
export function etchingTaps({ plan, state, person, letterOf }: Asked): BenchTaps {
  const { moves, contacts } = state;
  if (moves === null) return { first: null, others: [] };
  const byPlan = moves.elapsedSeconds - moves.lateSeconds;
  const { steps } = plan.schedule;
  const own = steps.filter((step) => step.person === person);
  // one screen may serve two people: what the other has behind them is offered once one's own is logged
  const theirs = steps.filter((step) => step.person !== person && step.to <= byPlan);
  const laid = new Set(contacts.map(({ place }) => place));
  const open = new Map(contacts.filter(({ liftedAt }) => liftedAt === null).map((one) => [one.place, one]));
  const toLay = [...own, ...theirs].find(({ action, zone }) => action === 'lay' && !laid.has(zone));
  const toLift = [...own, ...theirs].find(({ action, zone }) => action === 'lift' && open.has(zone));
  const called = own.findLast(({ action, from }) => action === 'move' && from <= byPlan - graceSeconds);
  const nowMoved = own.find(({ action, from, to }) => action === 'move' && from <= byPlan && byPlan < to);
  const coming = own.find(({ action, zone, from }) => from > byPlan && !(action === 'lay' && laid.has(zone)));
  const zeroMs = Date.parse(state.at) - byPlan * 1000;
  const untouched = (step: ScheduleStep | undefined) => {
    const contact = step && open.get(step.zone);
    return contact !== undefined && Date.parse(contact.touchedAt) < zeroMs + step!.from * 1000;
  };
  const toMove = [called, nowMoved].find(untouched);
  const tap = (kind: 'laid' | 'moved' | 'lifted', step: ScheduleStep | undefined): BenchTap[] =>
    step
      ? [{ kind, payload: { place: step.zone }, words: `${letterOf(step.zone)} ${kind}`, place: step.zone }]
      : [];
  const due = [
    ...tap('lifted', toLift).filter(() => toLift!.from <= byPlan),
    ...tap('moved', toMove).filter(() => !toLay || toLay.from > byPlan || toMove === nowMoved),
    ...tap('laid', toLay),
    ...tap('moved', toMove),
    ...tap('moved', coming?.action === 'move' && open.has(coming.zone) ? coming : undefined),
    ...tap('lifted', toLift),
  ];
  const first = due[0] ?? null;
  const others = new Map(due.filter(({ kind }) => kind !== first?.kind).map((one) => [one.kind, one]));
  const order: readonly RunEventKind[] = ['laid', 'moved', 'lifted'];
  return { first, others: order.flatMap((kind) => others.get(kind) ?? []) };
}

/** What can be logged once everything is lifted: the rounds of buffing, then the end of the etch. */
export function buffingTaps(buffedRounds: number, stage: LineStage): BenchTaps {
  const round = buffedRounds + 1;
  const buffed: BenchTap = {
    kind: 'buffed',
    payload: { round },
    words: `Round ${round} buffed`,
    place: null,
  };
  const end: BenchTap = {
    kind: 'stage-ended',
    payload: { stage },
    words: 'The etch is done',
    place: null,
  };
  return buffedRounds < buffingRounds ? { first: buffed, others: [end] } : { first: end, others: [buffed] };
}

/** The first touch of the page: from here the schedule runs. */
export const beginTap: BenchTap = {
  kind: 'stage-started',
  payload: { stage: 'first-etch' },
  words: 'Begin',
  place: null,
};

/** Something is wrong at a place, told with one touch; what it was can be said later. */
export function troubleTap(place: string | null): BenchTap {
  return { kind: 'trouble', payload: { place, words: 'trouble at the stone' }, words: 'Trouble', place };
}
