import type { TestOutcome } from '../../records/suspects.ts';
import type { Store } from '../../store/openStore.ts';
import type { OutcomeOf } from '../../store/repositories/suspectRepository.ts';

/** The newest outcome of every test of a comparison or a pull, that told last at the end. */
export async function testOutcomes(
  { suspectOutcomes }: Pick<Store, 'suspectOutcomes'>,
  of: OutcomeOf,
): Promise<readonly TestOutcome[]> {
  const byTest = new Map<string, TestOutcome>();
  for (const outcome of await suspectOutcomes.of(of))
    if ('test' in outcome) {
      byTest.delete(outcome.test);
      byTest.set(outcome.test, outcome);
    }
  return [...byTest.values()];
}
