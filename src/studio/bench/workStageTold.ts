import type { LineStage } from '../../records/run.ts';
import type { WorkStage } from '../../records/work.ts';
import type { StageTold } from './stagesDone.ts';

/** What a work's list says once a stage of the line has ended; the rest of the line moves nothing. */
const onceEnded: Readonly<Partial<Record<LineStage, WorkStage>>> = {
  grain: 'grained',
  draw: 'drawn',
  'first-etch': 'first-etch',
  washout: 'washed-out',
  'roll-up': 'rolled-up',
  'trial-proofs': 'trial-proofs',
  'second-etch': 'second-etch',
  'second-etch-quick': 'second-etch',
  proofs: 'proofs',
  edition: 'edition',
  'close-down': 'closed-down',
  regrain: 'regrained',
};

/** Where prints are pulled from the first minute on, the list says so at once. */
const onceBegun: readonly LineStage[] = ['trial-proofs', 'proofs', 'edition'];

/** The stage that a work stands in by what a log tells, oldest first; null where it tells of none. */
export function workStageTold(stages: readonly Pick<StageTold, 'stage' | 'state'>[]): WorkStage | null {
  const counts = ({ stage, state }: Pick<StageTold, 'stage' | 'state'>) =>
    stage in onceEnded && (state === 'done' || (state === 'open' && onceBegun.includes(stage)));
  const last = stages.findLast(counts);
  return last ? onceEnded[last.stage]! : null;
}
