import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { LineStage } from '../../../records/run.ts';
import { say } from '../../words/say.ts';
import { unruledWords } from './unruledWords.ts';

/** What is to be known from the beginning of an etch that no schedule leads. */
export function freeNotes(
  stage: LineStage,
  plan: KeptPlan | null,
  secondPlanned: boolean,
): readonly string[] {
  const planned = stage === 'first-etch' ? plan !== null : stage !== 'spot-etch' && secondPlanned;
  if (!planned) return [say('No plan leads this etch: for no place is it known how long it may lie')];
  if (stage !== 'first-etch' || plan === null) return [];
  return unruledWords(plan.plan);
}
