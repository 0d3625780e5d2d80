import type { RunState } from '../../records/bench.ts';
import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import type { LineStage } from '../../records/run.ts';

const secondEtches: readonly LineStage[] = ['second-etch', 'second-etch-quick'];

/**
 * The plans of a second etch that were not replaced before anything was etched: each that a second etch began after, before
 * the next one was made, and the newest.
 * @param plans oldest first.
 * @param runs of the same work, in any order.
 */
export function secondEtchesInForce(
  plans: readonly KeptSecondEtch[],
  runs: readonly Pick<RunState, 'stages'>[],
): KeptSecondEtch[] {
  const etchedAt = runs.flatMap(({ stages }) =>
    stages
      .filter(({ stage, state }) => secondEtches.includes(stage) && state !== 'skipped')
      .map(({ startedAt, endedAt }) => Date.parse(startedAt ?? endedAt ?? '')),
  );
  return plans.filter(({ createdAt }, index) => {
    const next = plans[index + 1];
    if (next === undefined) return true;
    return etchedAt.some((at) => Date.parse(createdAt) <= at && at < Date.parse(next.createdAt));
  });
}
