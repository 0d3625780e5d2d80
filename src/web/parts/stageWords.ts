import type { WorkStage } from '../../records/work.ts';
import { say } from '../words/say.ts';

/** What was done last to the stone, as the trade says it. */
export const workStageWords: Readonly<Record<WorkStage, string>> = {
  grained: say('grained, to be drawn on'),
  drawn: say('drawn, not etched'),
  'first-etch': say('first etch given'),
  'washed-out': say('washed out, base on'),
  'rolled-up': say('rolled up'),
  'trial-proofs': say('trial proofs pulled'),
  'second-etch': say('second etch given'),
  proofs: say('proofing'),
  edition: say('edition printing'),
  'closed-down': say('closed down'),
  regrained: say('regrained, work gone'),
};
