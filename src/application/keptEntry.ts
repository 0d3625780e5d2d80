import { type Failure, failure } from '../foundation/failure.ts';
import { ok } from '../foundation/result.ts';
import type { SaveRefusal } from '../records/saving.ts';
import type { KeptRecords } from '../store/keptRecords.ts';
import { refused, type Saved, type SavingParts, stale } from './saving.ts';

/** What a record of a list carries beside what a person writes. */
interface EntryFields {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}

/** A kind of record: where it is kept, what it is called, and how it is shown. */
export interface EntryKind<Kept extends EntryFields, Entry = Kept> {
  readonly shelf: (records: KeptRecords) => {
    readonly find: (id: string) => Promise<Kept | null>;
    readonly save: (entry: Kept, startedFrom: number) => Promise<unknown>;
  };
  /** In the middle of a sentence, such as `the report of May`. */
  readonly named: (kept: Kept) => string;
  readonly missing: () => Failure;
  readonly shown: (kept: Kept, records: KeptRecords, now: Date) => Entry | Promise<Entry>;
}

/** What a person wrote, as it is first kept. */
export function newEntry<Draft extends object>(
  { now, newId, sample }: Omit<SavingParts, 'store'>,
  draft: Draft,
): Draft & EntryFields {
  const createdAt = now().toISOString();
  return {
    ...draft,
    id: newId(),
    putBy: false,
    version: 1,
    createdAt,
    changedAt: createdAt,
    sample: sample ?? false,
  };
}

/**
 * Saves a changed record under its next version.
 * @param version the one that the change started from
 * @returns `not-found`, `stale-save` with the record as it is now, or what `change` refuses
 */
export function saveEntry<Kept extends EntryFields, Entry>(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  { shelf, named, missing, shown }: EntryKind<Kept, Entry>,
  id: string,
  version: number,
  change: (kept: Kept, records: KeptRecords) => Saved<Kept> | Promise<Saved<Kept>>,
): Promise<Saved<Entry>> {
  return store.decide<Entry, SaveRefusal<Entry>>(async (records) => {
    const kept = await shelf(records).find(id);
    if (kept === null) return refused(missing());
    if (kept.version !== version)
      return stale(named(kept), { yours: version, kept: kept.version }, await shown(kept, records, now()));
    const changed = await change(kept, records);
    if (!changed.ok) return refused(changed.error.failure);
    const next: Kept = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await shelf(records).save(next, version);
    return ok(await shown(next, records, now()));
  });
}

/** Takes a record off its list, or brings it back; `stale-save` or `not-found`. */
export function putEntryBy<Kept extends EntryFields, Entry>(
  parts: Pick<SavingParts, 'store' | 'now'>,
  kind: EntryKind<Kept, Entry>,
  id: string,
  { version, putBy }: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<Entry>> {
  return saveEntry(parts, kind, id, version, (kept) => ok({ ...kept, putBy }));
}

/** The refusal of a change to a record that is off its list. */
export function isPutBy(what: string) {
  return refused(failure('put-by', { what }));
}
