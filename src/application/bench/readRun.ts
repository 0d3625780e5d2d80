import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunState } from '../../records/bench.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { runState } from '../../studio/bench/runState.ts';
import { noSuchRun } from './logging.ts';
import type { RunLogs } from './runLogs.ts';

export interface ReadRunParts {
  readonly store: Pick<KeptRecords, 'runs' | 'works' | 'plans'>;
  readonly runLogs: RunLogs;
  readonly now: () => Date;
}

/** A run as it stands now; or `not-found`. */
export async function readRun(parts: ReadRunParts, id: string): Promise<Result<RunState>> {
  const run = await parts.store.runs.find(id);
  return run === null ? fail(noSuchRun()) : ok(await stateOf(parts, run));
}

/** The state of a run that was found. */
export async function stateOf({ store, runLogs, now }: ReadRunParts, run: RunSummary): Promise<RunState> {
  const work = await store.works.find(run.workId);
  if (work === null) throw new Error(`the work of run ${run.id} is gone, which the database forbids`);
  const plan = run.planId === null ? null : await store.plans.findFirst(run.workId, run.planId);
  const events = await runLogs.read(run.id);
  const state = runState({ run, work, plan, events, now: now() });
  const undone = await undoneNotes(store, run.id, events);
  const facts = state.facts.filter(
    ({ fact, sequence }) => fact !== 'undo-of-nothing' || !undone.has(sequence),
  );
  return { ...state, facts };
}

/** Sequence numbers of undos that take back a note, which the state leaves out. */
async function undoneNotes(
  { runs }: Pick<KeptRecords, 'runs'>,
  runId: string,
  events: readonly RunEvent[],
): Promise<ReadonlySet<number>> {
  const found = new Set<number>();
  for (const event of events) {
    if (event.kind !== 'undo') continue;
    const target = await runs.eventOf(runId, event.payload.clientId);
    if (target?.kind === 'note' && target.sequence < event.sequence) found.add(event.sequence);
  }
  return found;
}
