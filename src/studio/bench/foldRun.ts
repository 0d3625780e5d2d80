import type { Contact, Poured, RunFact, RunState } from '../../records/bench.ts';
import type { RunEvent, RunTool } from '../../records/run.ts';
import type { EtchesPlanned } from '../etch/contactRules.ts';
import { contactsOf } from './contacts.ts';
import type { Moment } from './eventMoments.ts';
import { readLog } from './placedEvents.ts';
import { pouredOf } from './pouredOf.ts';
import { type StageTold, stagesTold } from './stagesDone.ts';

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

/**
 * @param events all of a run that matter, in order of their sequence numbers
 * @param planned what its etches go by; left out, or null, where nothing was planned
 */
export function foldRun(events: readonly RunEvent[], planned: EtchesPlanned | null = null): RunFold {
  const { placed, facts } = readLog(events);
  const told = stagesTold(placed);
  const etched = contactsOf(placed, told.stages, planned ?? { first: null, seconds: [] });
  const hand = placed.findLast(({ event }) => event.kind === 'gummed' || event.kind === 'gum-off');
  const announced = placed.findLast(
    ({ event }) =>
      (event.kind === 'stage-started' || event.kind === 'repeated') && event.payload.stage === 'first-etch',
  );
  return {
    stages: told.stages,
    contacts: etched.contacts,
    buffedRounds: etched.buffedRounds,
    poured: pouredOf(placed, told.stages),
    facts: [...facts, ...told.facts, ...etched.facts].sort((a, b) => a.sequence - b.sequence),
    picked: pickedOf(placed.map(({ event }) => event)),
    hand: hand ? { moment: hand.moment, gummed: hand.event.kind === 'gummed' } : null,
    lastSign: placed.at(-1)?.moment ?? null,
    etchAnnounced: announced?.moment ?? null,
  };
}

function pickedOf(events: readonly RunEvent[]): RunState['picked'] {
  const newest = new Map<RunTool, RunState['picked'][number]>();
  for (const event of events) {
    if (event.kind !== 'picked') continue;
    const { tool, id, words } = event.payload;
    newest.set(tool, { tool, id: id ?? null, words });
  }
  return [...newest.values()];
}
