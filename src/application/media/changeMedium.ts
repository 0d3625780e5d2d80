import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { Medium, MediumEntry } from '../../records/medium.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { KeptMedium } from '../../store/repositories/mediumRepository.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';

type Parts = Pick<SavingParts, 'store'>;

/**
 * Adds a medium of the studio's own.
 * @returns `name-taken` where the id or the name is that of another medium
 */
export function addMedium({ store }: Parts, medium: Medium): Promise<Saved<MediumEntry>> {
  return store.decide(async (records) => {
    const kept = { ...medium, version: 1 };
    const fault = (await judgeId(records, kept)) ?? (await judgeName(records, kept));
    if (fault) return refused(fault);
    await records.media.add(kept);
    return ok(await mediumEntryOf(records, kept));
  });
}

/**
 * Saves what a person changed about a medium of the studio's own; its id stays.
 * @returns `medium-fixed` for the starting catalogue, `not-found`, `name-taken`, or `stale-save` with the medium as
 *   it is now
 */
export function changeMedium(
  { store }: Parts,
  id: string,
  { version, ...changes }: Changes<Omit<Medium, 'id'>>,
): Promise<Saved<MediumEntry>> {
  return store.decide<MediumEntry, SaveRefusal<MediumEntry>>(async (records) => {
    const kept = await records.media.find(id);
    if (kept === null) return refused(notOwn(id));
    if (kept.version !== version) {
      return stale(
        `the medium ${kept.name}`,
        { yours: version, kept: kept.version },
        await mediumEntryOf(records, kept),
      );
    }
    const next = { ...withChanges<KeptMedium>(kept, changes), version: version + 1 };
    const fault = await judgeName(records, next);
    if (fault) return refused(fault);
    await records.media.save(next, version);
    return ok(await mediumEntryOf(records, next));
  });
}

/**
 * Removes a medium of the studio's own. Plans that were made with it keep what they were made from.
 * @returns `medium-fixed` for the starting catalogue, `not-found`, or `medium-in-use` while a work has a zone in it
 */
export function removeMedium({ store }: Parts, id: string): Promise<Saved<null>> {
  return store.decide<null, SaveRefusal<null>>(async (records) => {
    const kept = await records.media.find(id);
    if (kept === null) return refused(notOwn(id));
    const use = await records.media.lastUse(id);
    if (use) {
      const where = `by the zone ${use.zoneName} of the work ${use.workTitle}`;
      return refused(failure('medium-in-use', { name: kept.name, where }));
    }
    await records.media.remove(id);
    return ok(null);
  });
}

function notOwn(id: string): Failure {
  const fixed = mediumCatalogue.find((medium) => medium.id === id);
  return fixed
    ? failure('medium-fixed', { name: fixed.name })
    : failure('not-found', { what: 'such medium' });
}

async function judgeId({ media }: Pick<KeptRecords, 'media'>, { id }: Medium): Promise<Failure | null> {
  const taken = mediumCatalogue.find((medium) => medium.id === id) ?? (await media.find(id));
  return taken ? failure('name-taken', { what: 'medium', name: id }, 'id') : null;
}

/** Two media of one name could not be told apart on a list. */
async function judgeName(
  { media }: Pick<KeptRecords, 'media'>,
  { id, name }: Medium,
): Promise<Failure | null> {
  const folded = (text: string) => text.trim().toLowerCase();
  const all = [...mediumCatalogue, ...(await media.list())];
  const taken = all.some((other) => other.id !== id && folded(other.name) === folded(name));
  return taken ? failure('name-taken', { what: 'medium', name }, 'name') : null;
}

async function mediumEntryOf(
  { media }: Pick<KeptRecords, 'media'>,
  medium: KeptMedium,
): Promise<MediumEntry> {
  const works = await media.workCounts();
  return { ...medium, own: true, works: works.get(medium.id) ?? 0 };
}
