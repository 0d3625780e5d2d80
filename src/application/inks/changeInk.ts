import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { Ink, InkDraft, InkEntry } from '../../records/ink.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { daysFrom } from '../batches/batchEntryOf.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { noSuchInk } from './findInks.ts';
import { inkEntryOf } from './inkEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<Ink, InkEntry> = {
  shelf: ({ inks }) => inks,
  named: ({ name }) => `the mix ${name}`,
  missing: noSuchInk,
  shown: (kept, { works }) => inkEntryOf(works, kept),
};

/**
 * Enters a mix of ink.
 * @returns `reference-unknown` for a work that is not there, `body-malformed` for parts that are both 0 or a day to come
 */
export function createInk(parts: SavingParts, draft: InkDraft): Promise<Saved<InkEntry>> {
  return parts.store.decide(async (records) => {
    const now = parts.now();
    const fault = await judgeInk(records, draft, now);
    if (fault) return refused(fault);
    const ink: Ink = newEntry(parts, draft);
    await records.inks.add(ink);
    return ok(await inkEntryOf(records.works, ink));
  });
}

/**
 * Saves what a person changed about a mix, such as another string length or what the prints said.
 * @returns `stale-save` with the mix as it is now, `put-by`, `not-found`, or as for a new one
 */
export function changeInk(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<InkDraft>,
): Promise<Saved<InkEntry>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The mix ${kept.name}`);
    const ink = withChanges<Ink>(kept, changes as Partial<Ink>);
    const fault = await judgeInk(records, ink, parts.now());
    return fault ? refused(fault) : ok(ink);
  });
}

/**
 * Takes a mix off the list, or brings it back.
 * @returns `stale-save` with the mix as it is now, or `not-found`
 */
export function putInkBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<InkEntry>> {
  return putEntryBy(parts, kind, id, change);
}

/** A day to come is a slip of the pen; one day is let pass, for a clock that stands in another zone. */
async function judgeInk(
  { works }: Pick<KeptRecords, 'works'>,
  { workId, softParts, stiffParts, madeOn }: InkDraft,
  now: Date,
): Promise<Failure | null> {
  if (workId !== null && (await works.find(workId)) === null)
    return failure('reference-unknown', { what: 'work', id: workId }, 'workId');
  if (softParts === 0 && stiffParts === 0)
    return failure('body-malformed', { why: 'a mix of nothing: one of the parts is above 0' }, 'softParts');
  if (madeOn !== null && daysFrom(madeOn, now) < -1)
    return failure('body-malformed', { why: `${madeOn} has not come yet` }, 'madeOn');
  return null;
}
