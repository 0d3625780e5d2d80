import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStone, TestStoneDraft } from '../../records/testStone.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import { badMark } from '../badMark.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { judgeTestStone } from './judgeTestStone.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';
import type { ReadingParts } from './readTestStoneReading.ts';
import { listStateOf } from './shownTestStone.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;
interface ChangeParts extends Parts {
  readonly store: Parts['store'] & ReadingParts['store'];
}
interface ReadParts {
  readonly store: Pick<KeptRecords, 'testStones'>;
}

const kind: EntryKind<TestStone> = {
  shelf: ({ testStones }) => testStones,
  named: ({ name }) => `the test stone ${name}`,
  missing: noSuchTestStone,
  shown: (kept) => kept,
};

export interface TestStonePage {
  readonly testStones: readonly TestStone[];
  readonly next: string | null;
}

/** A page of test stones, newest first; `body-malformed` where `after` marks no place. */
export async function listTestStones({ store }: ReadParts, query: PageQuery): Promise<Result<TestStonePage>> {
  const listed = await store.testStones.list(query);
  return listed === null ? badMark() : ok({ testStones: listed.page, next: listed.next });
}

/** One test stone, put by or not; or `not-found`. */
export async function readTestStone({ store }: ReadParts, id: string): Promise<Result<TestStone>> {
  const stone = await store.testStones.find(id);
  return stone === null ? fail(noSuchTestStone()) : ok(stone);
}

/** Enters a test stone; or the first fault of `judgeTestStone`. */
export function createTestStone(parts: SavingParts, draft: TestStoneDraft): Promise<Saved<TestStone>> {
  return parts.store.decide(async (records) => {
    const fault = await judgeTestStone(records, draft);
    if (fault) return refused(fault);
    const stone: TestStone = newEntry(parts, draft);
    await records.testStones.add(stone);
    return ok(stone);
  });
}

/**
 * Saves what a person changed about a test stone.
 * @returns `list-sealed` where patches or factors of a sealed one were changed, `stale-save` with the test stone as it is now,
 *   `put-by`, `not-found`, or a fault of `judgeTestStone`
 */
export async function changeTestStone(
  parts: ChangeParts,
  id: string,
  { version, ...changes }: Changes<TestStoneDraft>,
): Promise<Saved<TestStone>> {
  const sealed = await sealedFault(parts, id, changes);
  if (sealed) return refused(sealed);
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The test stone ${kept.name}`);
    const next = withChanges<TestStone>(kept, changes);
    const fault = await judgeTestStone(records, next);
    return fault ? refused(fault) : ok(next);
  });
}

/** Takes a test stone off the list, or brings it back; `stale-save` or `not-found`. */
export function putTestStoneBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<TestStone>> {
  return putEntryBy(parts, kind, id, change);
}

/** Whoever may not see what patches got can't say it either: what they send would wipe it out. */
async function sealedFault(
  { store }: ChangeParts,
  id: string,
  { patches, factors }: Partial<TestStoneDraft>,
): Promise<Failure | null> {
  if (patches === undefined && factors === undefined) return null;
  const stone = await store.testStones.find(id);
  const list = stone && (await listStateOf({ store }, stone));
  return list?.sealed ? failure('list-sealed', { what: stone!.name, untold: list.untold }, 'patches') : null;
}
