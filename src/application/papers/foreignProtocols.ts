import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ForeignProtocol, WorkProtocol } from '../../records/workProtocol.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import { badMark } from '../badMark.ts';
import { type EntryKind, newEntry, putEntryBy } from '../keptEntry.ts';
import type { Saved, SavingParts } from '../saving.ts';
import { setProtocol } from './workProtocol.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'foreignProtocols'>;
}

const kind: EntryKind<ForeignProtocol> = {
  shelf: ({ foreignProtocols }) => foreignProtocols,
  named: ({ protocol: { title } }) => `the protocol ${title}`,
  missing: noSuchProtocol,
  shown: (kept) => kept,
};

export interface ForeignProtocolPage {
  readonly protocols: readonly ForeignProtocol[];
  readonly next: string | null;
}

function noSuchProtocol(): Failure {
  return failure('not-found', { what: 'such protocol of another studio' });
}

/** Keeps another studio's protocol as it came. */
export function keepForeignProtocol(
  parts: SavingParts,
  { protocol, note }: { readonly protocol: WorkProtocol; readonly note: string },
): Promise<Saved<ForeignProtocol>> {
  return parts.store.decide(async ({ foreignProtocols }) => {
    const kept: ForeignProtocol = newEntry(parts, { protocol, note });
    await foreignProtocols.add(kept);
    return ok(kept);
  });
}

/** A page of them, newest first; `body-malformed` where `after` marks no place. */
export async function listForeignProtocols(
  { store }: Parts,
  query: PageQuery,
): Promise<Result<ForeignProtocolPage>> {
  const listed = await store.foreignProtocols.list(query);
  return listed === null ? badMark() : ok({ protocols: listed.page, next: listed.next });
}

/** One of them, put by or not; or `not-found`. */
export async function readForeignProtocol({ store }: Parts, id: string): Promise<Result<ForeignProtocol>> {
  const kept = await store.foreignProtocols.find(id);
  return kept === null ? fail(noSuchProtocol()) : ok(kept);
}

/** One of them as a PDF; or `not-found`. */
export async function foreignProtocolSheet(parts: Parts, id: string): Promise<Result<Uint8Array>> {
  const kept = await readForeignProtocol(parts, id);
  return kept.ok ? setProtocol(kept.value.protocol) : kept;
}

/** Takes one off the list, or brings it back; `stale-save` with it as it is now, or `not-found`. */
export function putForeignProtocolBy(
  parts: Pick<SavingParts, 'store' | 'now'>,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<ForeignProtocol>> {
  return putEntryBy(parts, kind, id, change);
}
