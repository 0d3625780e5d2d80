import { failure } from '../../foundation/failure.ts';
import type { Store } from '../../store/openStore.ts';

/** After this many ends of the program in the middle of one measurement, it is the measurement that ends it. */
const interruptionsAllowed = 1;

/**
 * At a start: what was being measured when the program ended waits again, except where that has happened before;
 * such a one has failed, so that it cannot end the program for ever.
 */
export async function resumeInterrupted(store: Pick<Store, 'comparisons'>): Promise<void> {
  for (const comparison of await store.comparisons.measuring()) {
    const interruptions = comparison.interruptions + 1;
    const why = `the program ended ${interruptions} times while measuring it`;
    await store.comparisons.move(
      comparison.id,
      ['measuring'],
      interruptions > interruptionsAllowed
        ? { to: 'not-done', failure: failure('measuring-crashed', { why }), interruptions: 0 }
        : { to: 'waiting', interruptions },
    );
  }
}
