import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunState } from '../../records/bench.ts';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { runState } from '../../studio/bench/runState.ts';
import { noSuchRun } from './logging.ts';
import type { RunFolds } from './runFolds.ts';

export interface ReadRunParts {
  readonly store: Pick<KeptRecords, 'runs' | 'works' | 'plans'>;
  readonly runFolds: RunFolds;
  readonly now: () => Date;
}

/** A run as it stands now; or `not-found`. */
export async function readRun(parts: ReadRunParts, id: string): Promise<Result<RunState>> {
  const run = await parts.store.runs.find(id);
  return run === null ? fail(noSuchRun()) : ok(await stateOf(parts, run));
}

/** The state of a run that was found. */
export async function stateOf(parts: ReadRunParts, run: RunSummary): Promise<RunState> {
  const work = await parts.store.works.find(run.workId);
  if (work === null) throw new Error(`the work of run ${run.id} is gone, which the database forbids`);
  const plan = run.planId === null ? null : await parts.store.plans.findFirst(run.workId, run.planId);
  return runState({ run, work, plan, fold: await parts.runFolds.of(run, plan), now: parts.now() });
}
