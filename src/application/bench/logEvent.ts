import type { Failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunEvent, RunEventInput } from '../../records/run.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchRun, type RunAnnouncements } from './logging.ts';
import { moveWork } from './moveWork.ts';

export interface LogEventParts extends Pick<SavingParts, 'store' | 'now'> {
  readonly runEvents: Pick<RunAnnouncements, 'announce'>;
}

interface Outcome {
  readonly event: RunEvent;
  /** null where it had been kept before. */
  readonly workId: string | null;
}

/**
 * Keeps what happened in a run, and tells everybody once it is on the disk. Nothing well-formed is refused: it
 * happened. Sent again under the same client id, gives the event as it was kept first, and tells nobody.
 * @returns `not-found` where there is no such run
 */
export async function logEvent(
  { store, now, runEvents }: LogEventParts,
  runId: string,
  input: RunEventInput,
): Promise<Result<RunEvent>> {
  const outcome = await store.decide<Outcome, Failure>(async (records) => {
    const { runs } = records;
    const kept = await runs.eventOf(runId, input.clientId);
    if (kept) return ok({ event: kept, workId: null });
    const run = await runs.find(runId);
    if (run === null) return fail(noSuchRun());
    const sequence = run.events + 1;
    await runs.addEvent(runId, { ...input, sequence, receivedAt: now().toISOString() } as RunEvent);
    await moveWork(records, run, input.kind, now());
    // read back, so that the first answer and that to a retry are the same to the letter
    return ok({ event: (await runs.eventOf(runId, input.clientId))!, workId: run.workId });
  });
  if (!outcome.ok) return outcome;
  const { event, workId } = outcome.value;
  if (workId !== null) runEvents.announce({ runId, workId, event });
  return ok(event);
}
