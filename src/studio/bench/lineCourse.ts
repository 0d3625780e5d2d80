import type { StageDone } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';
import type { WorkStage } from '../../records/work.ts';
import { lineRule } from './lineStages.ts';
import { corrections } from './stagesDone.ts';

/** Where a run stands in the line. */
export interface LineCourse {
  /** The stage under way; a correction before the stage of the line that it interrupts. Null between stages. */
  readonly open: StageDone | null;
  /** The last stage of the line that was done, skipped or is under way. */
  readonly last: StageDone | null;
  /** What usually comes next; null at the end of the line. */
  readonly next: LineStage | null;
}

/** What follows in the line after what was done last to the stone. */
const afterTyped: Readonly<Record<WorkStage, LineStage | null>> = {
  grained: 'edges',
  drawn: 'powder',
  'first-etch': 'first-rest',
  'washed-out': 'base',
  'rolled-up': 'trial-proofs',
  'trial-proofs': 'second-powder',
  'second-etch': 'second-rest',
  proofs: 'good-to-print',
  edition: 'close-down',
  'closed-down': 'regrain',
  regrained: null,
};

/**
 * Where a run stands: what is under way, and what usually comes next. Without a log it follows from the work's stage.
 * @param stages as they were told, oldest first
 */
export function lineCourse(stages: readonly StageDone[], workStage: WorkStage): LineCourse {
  const ofLine = stages.filter(({ stage }) => !corrections.includes(stage));
  const last = ofLine.at(-1) ?? null;
  const open = stages.findLast(({ state }) => state === 'open') ?? null;
  let next = last ? lineRule(last.stage).next : afterTyped[workStage];
  // what was skipped needs no time to dry or rest
  while (last?.state === 'skipped' && next !== null && lineRule(next).waiting) next = lineRule(next).next;
  return { open, last, next };
}
