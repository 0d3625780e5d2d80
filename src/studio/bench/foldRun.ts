import type { Contact, Poured, RunFact, RunState } from '../../records/bench.ts';
import type { RunEvent, RunTool } from '../../records/run.ts';
import type { EtchesPlanned } from '../etch/contactRules.ts';
import { contactsOf, type TouchedContact } from './contacts.ts';
import { contactsShown } from './contactsShown.ts';
import { type Clock, type Moment, wrongClock } from './eventMoments.ts';
import { type PlacedEvent, type ReadLog, readLog } from './placedEvents.ts';
import { pouredOf } from './pouredOf.ts';
import { rulesOfContacts } from './rulesOfContacts.ts';
import { lastEtch, type StageTold, stagesTold } from './stagesDone.ts';

/** All that a log amounts to, whatever the hour: the same until the next event. */
export interface RunFold {
  readonly stages: readonly StageTold[];
  readonly contacts: readonly Contact[];
  readonly buffedRounds: number;
  readonly poured: readonly Poured[];
  readonly facts: readonly RunFact[];
  readonly picked: RunState['picked'];
  /** When a hand last gummed the stone or took its gum off, outside the stages that do so. */
  readonly hand: { readonly moment: Moment; readonly gummed: boolean } | null;
  /** The last sign of work. */
  readonly lastSign: Moment | null;
  /** When the first etch was said to begin; null where its first touch was its beginning. */
  readonly etchAnnounced: Moment | null;
}

/** A log as far as it was read, with all that is needed to read on from there. Plain, so that it can be kept as JSON. */
export interface LogReading extends Omit<RunFold, 'contacts' | 'facts'> {
  readonly clocks: readonly Clock[];
  readonly contacts: readonly TouchedContact[];
  readonly facts: Readonly<Record<'clocks' | 'takenBack' | 'stages' | 'contacts', readonly RunFact[]>>;
}

const nothingRead: LogReading = {
  clocks: [],
  stages: [],
  contacts: [],
  buffedRounds: 0,
  poured: [],
  facts: { clocks: [], takenBack: [], stages: [], contacts: [] },
  picked: [],
  hand: null,
  lastSign: null,
  etchAnnounced: null,
};

/**
 * @param events all of a run that matter, in order of their sequence numbers
 * @param planned what its etches go by; left out, or null, where nothing was planned
 */
export function foldRun(events: readonly RunEvent[], planned: EtchesPlanned | null = null): RunFold {
  return foldOf(readWhole(events, planned), planned);
}

/** Reads a log from its beginning. */
export function readWhole(events: readonly RunEvent[], planned: EtchesPlanned | null): LogReading {
  return grown(nothingRead, readLog(events), planned);
}

/**
 * Reads on from where a log was read to. Null where what came since changes what was read before: a clock turns out to
 * stand otherwise, something happened earlier than what is known, something from before is taken back, or another etch began,
 * by which its rounds are counted and its places named. Then the log is read whole.
 * @param events those that came since, in order of their sequence numbers
 * @param planned the same as it was read with
 */
export function readFurther(
  before: LogReading,
  events: readonly RunEvent[],
  planned: EtchesPlanned | null,
): LogReading | null {
  if (events.length === 0) return before;
  const log = readLog(events, before.clocks);
  const known = before.lastSign?.ms ?? Number.NEGATIVE_INFINITY;
  if (log.moved || log.placed.some(({ moment }) => moment.ms <= known)) return null;
  if (log.facts.takenBack.some(({ fact }) => fact === 'undo-of-nothing')) return null;
  const reading = grown(before, log, planned);
  const [etch, then] = [lastEtch(reading.stages), lastEtch(before.stages)];
  return etch?.stage === then?.stage && etch?.started?.ms === then?.started?.ms ? reading : null;
}

/** What a log amounts to as far as it was read. */
export function foldOf(reading: LogReading, planned: EtchesPlanned | null): RunFold {
  const { clocks, facts, contacts, ...told } = reading;
  const clockFacts = [...facts.clocks, ...clocks.flatMap(wrongClock)];
  return {
    ...told,
    contacts: contactsShown(contacts, told.stages, rulesOfContacts(planned ?? unplanned)),
    facts: [...clockFacts, ...facts.takenBack, ...facts.stages, ...facts.contacts].sort(
      (a, b) => a.sequence - b.sequence,
    ),
  };
}

const unplanned: EtchesPlanned = { first: null, seconds: [] };

function grown(before: LogReading, log: ReadLog, planned: EtchesPlanned | null): LogReading {
  const { placed, clocks } = log;
  const told = stagesTold(placed, before.stages);
  const { facts, buffedRounds } = before;
  const touched = { contacts: before.contacts, buffedRounds, facts: facts.contacts };
  const etched = contactsOf(placed, told.stages, rulesOfContacts(planned ?? unplanned), touched);
  const hand = placed.findLast(({ event }) => event.kind === 'gummed' || event.kind === 'gum-off');
  const announced = placed.findLast(
    ({ event }) =>
      (event.kind === 'stage-started' || event.kind === 'repeated') && event.payload.stage === 'first-etch',
  );
  return {
    clocks,
    stages: told.stages,
    contacts: etched.contacts,
    buffedRounds: etched.buffedRounds,
    poured: [...before.poured, ...pouredOf(placed, told.stages)],
    facts: {
      clocks: [...facts.clocks, ...log.facts.clocks],
      takenBack: [...facts.takenBack, ...log.facts.takenBack],
      stages: [...facts.stages, ...told.facts],
      contacts: etched.facts,
    },
    picked: pickedOf(before.picked, placed),
    hand: hand ? { moment: hand.moment, gummed: hand.event.kind === 'gummed' } : before.hand,
    lastSign: placed.at(-1)?.moment ?? before.lastSign,
    etchAnnounced: announced?.moment ?? before.etchAnnounced,
  };
}

function pickedOf(before: RunState['picked'], placed: readonly PlacedEvent[]): RunState['picked'] {
  const newest = new Map<RunTool, RunState['picked'][number]>(before.map((one) => [one.tool, one]));
  for (const { event } of placed) {
    if (event.kind !== 'picked') continue;
    const { tool, id, words } = event.payload;
    newest.set(tool, { tool, id: id ?? null, words });
  }
  return [...newest.values()];
}
