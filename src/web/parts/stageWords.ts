import type { WorkStage } from '../../records/work.ts';

/** What was done last to the stone, as the trade says it. */
export const workStageWords: Readonly<Record<WorkStage, string>> = {
  grained: 'grained, to be drawn on',
  drawn: 'drawn, not etched',
  'first-etch': 'first etch given',
  'washed-out': 'washed out, base on',
  'rolled-up': 'rolled up',
  'trial-proofs': 'trial proofs pulled',
  'second-etch': 'second etch given',
  proofs: 'proofing',
  edition: 'edition printing',
  'closed-down': 'closed down',
  regrained: 'regrained, work gone',
};
