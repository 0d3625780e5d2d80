import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullEntry, PullMeasuring } from '../../records/pullTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { Store } from '../../store/openStore.ts';
import { pullAge } from '../../studio/proofs/pullAge.ts';

export interface PullEntryParts {
  readonly store: Pick<Store, 'pullFiles'>;
  readonly pullQueue: {
    progressOf(pullId: string, photograph: string): MeasuringProgress | null;
  };
}

/** A pull whole: with the age of its photographs, and how far their reading has come. */
export async function pullEntryOf(
  { store, pullQueue }: PullEntryParts,
  records: Pick<KeptRecords, 'pullMeasurings'>,
  pull: Pull,
): Promise<PullEntry> {
  const measurings = new Map<string, PullMeasuring>();
  for (const { photograph, state, failure, resultKey } of await records.pullMeasurings.ofPull(pull.id)) {
    const done = state === 'measured' || state === 'refused';
    const tones = done && resultKey !== null ? await store.pullFiles.record(resultKey) : null;
    const progress = pullQueue.progressOf(pull.id, photograph);
    measurings.set(photograph, { photograph, state, failure, progress, tones });
  }
  return {
    ...pull,
    photographs: pull.photographs.map((shown) => ({
      ...shown,
      age: pullAge(pull, shown),
      measuring: measurings.get(shown.photograph) ?? null,
    })),
  };
}
