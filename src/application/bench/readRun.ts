import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunState } from '../../records/bench.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Store } from '../../store/openStore.ts';
import { runState } from '../../studio/bench/runState.ts';
import { noSuchRun } from './logging.ts';
import { pressHands } from './pressHands.ts';
import type { RunFolds } from './runFolds.ts';

export interface ReadRunParts {
  readonly store: Pick<Store, 'runs' | 'works' | 'plans' | 'waits'>;
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
  const fold = await parts.runFolds.of(run, plan);
  const press = (await pressHands(parts.store, [run.workId])).get(run.workId) ?? null;
  return runState({ run, work, plan, fold, press, now: parts.now() });
}
