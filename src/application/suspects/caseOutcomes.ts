import type { Suspect, SuspectsQuestion, TestOutcome } from '../../records/suspects.ts';
import type { Store } from '../../store/openStore.ts';
import type { OutcomeOf } from '../../store/repositories/suspectRepository.ts';

/**
 * What was kept of a comparison or a pull: the newest outcome of every test, that told last at the end, and the cause
 * that was found last.
 */
export async function caseOutcomes(
  { suspectOutcomes }: Pick<Store, 'suspectOutcomes'>,
  of: OutcomeOf,
): Promise<Required<Pick<SuspectsQuestion, 'outcomes' | 'found'>>> {
  const byTest = new Map<string, TestOutcome>();
  let found: Suspect | null = null;
  for (const outcome of await suspectOutcomes.of(of)) {
    if ('found' in outcome) found = outcome.found;
    else {
      byTest.delete(outcome.test);
      byTest.set(outcome.test, outcome);
    }
  }
  return { outcomes: [...byTest.values()], found };
}
