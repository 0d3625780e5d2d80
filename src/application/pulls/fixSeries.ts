import { ok } from '../../foundation/result.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { Work } from '../../records/work.ts';
import type { Decide } from '../../store/keptRecords.ts';
import { settingsOf } from './seriesSettings.ts';

interface Parts {
  readonly store: { readonly decide: Decide };
  readonly now: () => Date;
}

/**
 * The first pull that is measured settles what its series is measured by: the areas as they are, and its solid as the
 * reference that all pulls are held against. What was settled before stays; an impression of an edition settles nothing.
 */
export async function fixSeries(
  { store, now }: Parts,
  work: Work,
  pull: Pull,
  tones: PullTones,
): Promise<void> {
  if (pull.impression) return;
  await store.decide(async (records) => {
    const kept = await settingsOf(records, work);
    const reference =
      kept.reference ?? (tones.solid && { darkness: tones.solid.darkness, pull: pull.number });
    if (kept.version > 0 && reference === kept.reference) return ok(null);
    const next = { ...kept, reference, version: kept.version + 1, changedAt: now().toISOString() };
    await records.series.saveSettings(next, kept.version);
    return ok(null);
  });
}
