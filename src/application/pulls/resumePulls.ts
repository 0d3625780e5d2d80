import { failure } from '../../foundation/failure.ts';
import type { Store } from '../../store/openStore.ts';

/** After this many ends of the program in the middle of one reading, it is the reading that ends it. */
const interruptionsAllowed = 1;

/** At a start: what was being read when the program ended waits again, except where that has happened before. */
export async function resumePulls({ pullMeasurings }: Pick<Store, 'pullMeasurings'>): Promise<void> {
  for (const { pullId, photograph, interruptions: before } of await pullMeasurings.measuring()) {
    const interruptions = before + 1;
    const why = `the program ended ${interruptions} times while measuring it`;
    await pullMeasurings.move(
      pullId,
      photograph,
      ['measuring'],
      interruptions > interruptionsAllowed
        ? { to: 'not-done', failure: failure('measuring-crashed', { why }), interruptions: 0 }
        : { to: 'waiting', interruptions },
    );
  }
}
