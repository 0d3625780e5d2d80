import type { StageRule } from '../../records/bench.ts';
import { lineStages, stageRuleOf } from '../../studio/bench/lineStages.ts';

/** Every stage of the line in its order, then the corrections, with what is expected of each. */
export function listStages(): readonly StageRule[] {
  return lineStages.map(stageRuleOf);
}
