import type { RunState } from '../../../records/bench.ts';
import type { ScheduleStep } from '../../../records/etch.ts';
import type { LineStage, RunEventKind } from '../../../records/run.ts';
import { buffingRounds } from '../../../studio/etch/endSigns.ts';
import { say } from '../../words/say.ts';
import type { AskedMoves } from './askedMove.ts';

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

/**
 * What can be logged while the etch lies: the move that is asked comes first. Beside it stand what the clock has gone
 * past without a tap, and what can be logged ahead of its time, one of a kind.
 */
export function etchingTaps(
  { asked, behind, coming }: AskedMoves,
  contacts: RunState['contacts'],
  letterOf: (place: string) => string,
): BenchTaps {
  const lying = new Set(contacts.filter(({ liftedAt }) => liftedAt === null).map(({ place }) => place));
  const tap = ({ action, zone }: ScheduleStep): BenchTap => placeTap(logged[action], zone, letterOf(zone));
  const first = asked && tap(asked.step);
  const missed = [behind.find(({ action }) => action === 'lay'), behind.find(({ zone }) => lying.has(zone))];
  const ahead = (action: ScheduleStep['action']) =>
    coming.find((step) => step.action === action && (action === 'lay' || lying.has(step.zone)));
  const others = new Map<RunEventKind, BenchTap>();
  for (const step of [...missed, ahead('lay'), ahead('move'), ahead('lift')]) {
    if (!step || step === asked?.step) continue;
    const one = tap(step);
    if (one.kind === first?.kind && !missed.includes(step)) continue;
    if (!others.has(one.kind)) others.set(one.kind, one);
  }
  const order: readonly RunEventKind[] = ['laid', 'moved', 'lifted'];
  return { first, others: order.flatMap((kind) => others.get(kind) ?? []) };
}

/** What one touch logs of one place; what the target says begins with the place's letter. */
export function placeTap(kind: 'laid' | 'moved' | 'lifted', place: string, letter: string): BenchTap {
  return { kind, payload: { place }, words: tapWords[kind](letter), place };
}

const tapWords = {
  laid: (letter: string) => say('{letter} laid', { letter }),
  moved: (letter: string) => say('{letter} moved', { letter }),
  lifted: (letter: string) => say('{letter} lifted', { letter }),
} as const;

const logged = { lay: 'laid', move: 'moved', lift: 'lifted' } as const;

/** What can be logged once everything is lifted: the rounds of buffing, then the end of the etch. */
export function buffingTaps(buffedRounds: number, stage: LineStage): BenchTaps {
  const round = buffedRounds + 1;
  const buffed: BenchTap = {
    kind: 'buffed',
    payload: { round },
    words: say('Round {round} buffed', { round }),
    place: null,
  };
  const end: BenchTap = {
    kind: 'stage-ended',
    payload: { stage },
    words: say('The etch is done'),
    place: null,
  };
  return buffedRounds < buffingRounds ? { first: buffed, others: [end] } : { first: end, others: [buffed] };
}

/** The first touch of the page: from here the schedule runs. */
export const beginTap: BenchTap = {
  kind: 'stage-started',
  payload: { stage: 'first-etch' },
  words: say('Begin'),
  place: null,
};

/** The stone was gummed between two stages, or within one. */
export const gummedTap: BenchTap = { kind: 'gummed', payload: {}, words: say('Gummed'), place: null };

/** What a trouble says of which nothing was said yet. */
export const troubleAtStone = say('trouble at the stone');

/** Something is wrong at a place, told with one touch; what it was can be said later. */
export function troubleTap(place: string | null): BenchTap {
  return {
    kind: 'trouble',
    payload: { place, words: troubleAtStone },
    words: say('Trouble'),
    place,
  };
}
