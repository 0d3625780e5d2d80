import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { CuratedPrint, Edition, EditionDraft } from '../../records/edition.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { judgePrints } from '../../studio/editions/judgePrints.ts';
import { ledgerState } from '../../studio/editions/ledgerState.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import { noSuchEdition } from './findEditions.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<Edition> = {
  shelf: ({ editions }) => editions,
  named: ({ title }) => `the edition ${title}`,
  missing: noSuchEdition,
  // its prints as the shelf orders them
  shown: async ({ id }, { editions }) => (await editions.find(id))!,
};

/**
 * Enters an edition of a work.
 * @returns `not-found` without the work, `put-by`, or `reference-unknown` for a pull of another work
 */
export function createEdition(
  parts: SavingParts,
  workId: string,
  draft: EditionDraft,
): Promise<Saved<Edition>> {
  return parts.store.decide(async (records) => {
    const work = await records.works.find(workId);
    if (work === null) return refused(noSuchWork());
    if (work.putBy) return isPutBy(`The work ${work.title}`);
    const unknown = await judgeApproval(records, workId, draft.approvalPullId);
    if (unknown) return refused(unknown);
    const edition: Edition = newEntry(parts, { ...draft, workId, prints: [] });
    await records.editions.add(edition);
    return ok(edition);
  });
}

/**
 * Saves what a person changed about an edition.
 * @returns `stale-save` with the edition as it is now, `put-by`, `not-found`, `reference-unknown`, or
 *   `curation-impossible` where its prints no longer fit its size
 */
export function changeEdition(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<EditionDraft>,
): Promise<Saved<Edition>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The edition ${kept.title}`);
    const next = withChanges<Edition>(kept, changes);
    const unknown = await judgeApproval(records, kept.workId, next.approvalPullId);
    return unknown ? refused(unknown) : judged(next, records, parts.now());
  });
}

/**
 * Says what becomes of the impressions: these prints in place of those before.
 * @returns `number-given-twice`, `curation-impossible`, `stale-save` with the edition as it is now, `put-by`, `not-found`
 */
export function curateEdition(
  parts: Parts,
  id: string,
  { version, prints }: { readonly version: number; readonly prints: readonly CuratedPrint[] },
): Promise<Saved<Edition>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The edition ${kept.title}`);
    const next = await judged({ ...kept, prints }, records, parts.now());
    if (next.ok) await records.editions.replacePrints(id, prints);
    return next;
  });
}

/** Takes an edition off its work, or brings it back; `stale-save` or `not-found`. */
export function putEditionBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<Edition>> {
  return putEntryBy(parts, kind, id, change);
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
