import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { StudioDraft, StudioSettings } from '../../records/studio.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { type Saved, type SavingParts, stale } from '../saving.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'studio'>;
}

const noHours = Array.from({ length: 7 }, () => []);

/** The settings as they are kept; as long as nobody saved any, an empty week in this machine's zone, version 0. */
export async function readStudio({ store }: Parts): Promise<StudioSettings> {
  return (await store.studio.find()) ?? undescribed();
}

/** The settings, or `studio-not-described` where nobody can be planned with. */
export async function describedStudio({ store }: Parts): Promise<Result<StudioSettings>> {
  const kept = await store.studio.find();
  return kept === null ? fail(failure('studio-not-described')) : ok(kept);
}

/** Saves the settings; or `stale-save` with what is kept now. */
export function saveStudio(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  { version, ...draft }: StudioDraft & { readonly version: number },
): Promise<Saved<StudioSettings>> {
  return store.decide<StudioSettings, SaveRefusal<StudioSettings>>(async (records) => {
    const kept = (await records.studio.find()) ?? undescribed();
    if (kept.version !== version) {
      return stale('people and hours', { yours: version, kept: kept.version }, kept);
    }
    const next = { ...draft, version: version + 1, changedAt: now().toISOString() };
    await records.studio.save(next, version);
    return ok(next);
  });
}

function undescribed(): StudioSettings {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  return { timeZone, open: noHours, exceptions: [], people: [], times: [], version: 0, changedAt: null };
}
