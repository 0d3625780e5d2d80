import { seededRandom } from '../../../foundation/random.ts';
import type { BlindSitting, HoldCorrection } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import type { TestStoneEvent } from '../../../records/testStoneEvent.ts';

/** Corrections in the order in which they were kept. */
export function correctionsIn(events: readonly TestStoneEvent[]): HoldCorrection[] {
  return events.flatMap((event) =>
    event.kind === 'corrected' ? [{ ...event.payload, who: event.actor, at: event.at }] : [],
  );
}

/**
 * Blind readings, oldest first. Patches that are meant to print are shown, shuffled by the sitting's seed (R. A. Fisher and
 * F. Yates 1938, as it is usually run from the end); one that was added since comes last.
 */
export function sittingsIn(
  events: readonly TestStoneEvent[],
  stone: Pick<TestStone, 'patches'>,
): BlindSitting[] {
  const shown = stone.patches
    .filter(({ intention }) => intention === 'image' || intention === 'control')
    .map(({ id }) => id);
  return events.flatMap((event) => {
    if (event.kind !== 'sitting-begun') return [];
    const answers = events.flatMap((seen) =>
      seen.kind === 'seen' && seen.payload.sitting === event.clientId
        ? [{ patch: seen.payload.patch, hold: seen.payload.hold, at: seen.at }]
        : [],
    );
    const { print, seed } = event.payload;
    return [
      {
        id: event.clientId,
        print,
        reader: event.actor,
        seed,
        startedAt: event.at,
        order: shuffled(shown, seed),
        answers,
      },
    ];
  });
}

function shuffled(patches: readonly string[], seed: number): string[] {
  const random = seededRandom(seed);
  const order = [...patches];
  for (let last = order.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}
