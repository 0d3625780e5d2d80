import type { RunFact } from '../../../records/bench.ts';
import type { RunEvent } from '../../../records/run.ts';
import { effectiveEvents } from '../../../studio/bench/effectiveEvents.ts';
import { etches } from '../../../studio/bench/stagesDone.ts';

/** The facts of the etch that was begun last: what an earlier one was like is no news at this one. All where none was begun by itself. */
export function factsOfEtch(facts: readonly RunFact[], events: readonly RunEvent[]): readonly RunFact[] {
  const begun = effectiveEvents(events).events.findLast(
    ({ kind, payload }) =>
      (kind === 'stage-started' || kind === 'repeated') && etches.includes(payload.stage),
  );
  return begun === undefined ? facts : facts.filter(({ sequence }) => sequence >= begun.sequence);
}
