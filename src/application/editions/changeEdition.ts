import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { CuratedPrint, Edition, EditionDraft } from '../../records/edition.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { judgePrints } from '../../studio/editions/judgePrints.ts';
import { ledgerState } from '../../studio/editions/ledgerState.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import { noSuchEdition } from './findEditions.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

/**
 * Enters an edition of a work.
 * @returns `not-found` without the work, `archived`, or `reference-unknown` for a pull of another work
 */
export function createEdition(
  { store, now, newId, sample }: SavingParts,
  workId: string,
  draft: EditionDraft,
): Promise<Saved<Edition>> {
  return store.decide(async (records) => {
    const work = await records.works.find(workId);
    if (work === null) return refused(noSuchWork());
    if (work.archived) return refused(failure('archived', { what: `The work ${work.title}` }));
    const unknown = await judgeApproval(records, workId, draft.approvalPullId);
    if (unknown) return refused(unknown);
    const at = now().toISOString();
    const edition: Edition = {
      ...draft,
      id: newId(),
      workId,
      prints: [],
      archived: false,
      version: 1,
      createdAt: at,
      changedAt: at,
      sample: sample ?? false,
    };
    await records.editions.add(edition);
    return ok(edition);
  });
}

/**
 * Saves what a person changed about an edition.
 * @returns `stale-save` with the edition as it is now, `archived`, `not-found`, `reference-unknown`, or
 *   `curation-impossible` where its prints no longer fit its size
 */
export function changeEdition(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<EditionDraft>,
): Promise<Saved<Edition>> {
  return saveEdition(parts, id, version, async (kept, records) => {
    if (kept.archived) return refused(failure('archived', { what: `The edition ${kept.title}` }));
    const next = withChanges<Edition>(kept, changes);
    const unknown = await judgeApproval(records, kept.workId, next.approvalPullId);
    return unknown ? refused(unknown) : judged(next, records, parts.now());
  });
}

/**
 * Says what becomes of the impressions: these prints in place of those before.
 * @returns `number-given-twice`, `curation-impossible`, `stale-save` with the edition as it is now, `archived`, `not-found`
 */
export function curateEdition(
  parts: Parts,
  id: string,
  { version, prints }: { readonly version: number; readonly prints: readonly CuratedPrint[] },
): Promise<Saved<Edition>> {
  return saveEdition(parts, id, version, async (kept, records) => {
    if (kept.archived) return refused(failure('archived', { what: `The edition ${kept.title}` }));
    const next = await judged({ ...kept, prints }, records, parts.now());
    if (next.ok) await records.editions.replacePrints(id, prints);
    return next;
  });
}

/** Takes an edition off its work, or brings it back; `stale-save` or `not-found`. */
export function archiveEdition(
  parts: Parts,
  id: string,
  { version, archived }: { readonly version: number; readonly archived: boolean },
): Promise<Saved<Edition>> {
  return saveEdition(parts, id, version, async (kept) => ok({ ...kept, archived }));
}

/** A pull that is named as approved must be one of the work. */
async function judgeApproval(
  { pulls }: KeptRecords,
  workId: string,
  id: string | null,
): Promise<Failure | null> {
  if (id === null || (await pulls.find(id))?.workId === workId) return null;
  return failure('reference-unknown', { what: 'pull of this work', id }, 'approvalPullId');
}

async function judged(edition: Edition, records: KeptRecords, now: Date): Promise<Saved<Edition>> {
  const { impressions } = ledgerState(await records.ledgers.entries(edition.id), now);
  const fault = judgePrints(edition.prints, edition.size, impressions);
  return fault ? refused(fault) : ok(edition);
}

function saveEdition(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (kept: Edition, records: KeptRecords) => Promise<Saved<Edition>>,
): Promise<Saved<Edition>> {
  return store.decide<Edition, SaveRefusal<Edition>>(async (records) => {
    const kept = await records.editions.find(id);
    if (kept === null) return refused(noSuchEdition());
    if (kept.version !== version) {
      return stale(`the edition ${kept.title}`, { yours: version, kept: kept.version }, kept);
    }
    const changed = await change(kept, records);
    if (!changed.ok) return refused(changed.error.failure);
    const next: Edition = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await records.editions.save(next, version);
    return ok((await records.editions.find(id))!);
  });
}
