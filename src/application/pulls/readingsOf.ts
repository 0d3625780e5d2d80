import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { Store } from '../../store/openStore.ts';

export interface ReadingsParts {
  readonly store: Pick<KeptRecords, 'pullMeasurings'> & Pick<Store, 'pullFiles'>;
}

/** What the measured photographs of pulls were read to be, by photograph. */
export async function readingsOf(
  { store }: ReadingsParts,
  pulls: readonly Pull[],
): Promise<ReadonlyMap<string, PullTones>> {
  const found = new Map<string, PullTones>();
  for (const pull of pulls) {
    for (const { photograph, state, resultKey } of await store.pullMeasurings.ofPull(pull.id)) {
      if (state !== 'measured' || resultKey === null) continue;
      const tones = await store.pullFiles.record(resultKey);
      if (tones) found.set(photograph, tones);
    }
  }
  return found;
}
