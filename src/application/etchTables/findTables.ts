import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchTableChanges, EtchTableIssue, EtchTableSummary } from '../../records/etchTableEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { tableChanges } from '../../studio/etch/tableChanges.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'etchTables'>;
}

/** The failure for a table, or an issue of one, that is not there. */
export function noSuchTable(what: 'etch table' | 'issue of this table' = 'etch table'): Failure {
  return failure('not-found', { what: `such ${what}` });
}

/** All tables by their newest version: the starting ones, then the studio's own by name. */
export function listTables({ store }: Parts): Promise<readonly EtchTableSummary[]> {
  return store.etchTables.list();
}

/** A table at one of its issues, else at the newest; or `not-found`. */
export async function readTable(
  { store }: Parts,
  id: string,
  version: number | null = null,
): Promise<Result<EtchTableIssue>> {
  const found = await store.etchTables.find(id, version);
  return found === null
    ? fail(noSuchTable(version === null ? 'etch table' : 'issue of this table'))
    : ok(found);
}

/** All issues of a table, newest first; or `not-found`. */
export async function listTableIssues(
  { store }: Parts,
  id: string,
): Promise<Result<readonly EtchTableSummary[]>> {
  const issues = await store.etchTables.issues(id);
  return issues.length === 0 ? fail(noSuchTable()) : ok(issues);
}

/** What changed from one issue of a table to another (the newest where `to` is null), in sentences; or `not-found`. */
export async function readTableChanges(
  { store }: Parts,
  id: string,
  { from, to }: { readonly from: number; readonly to: number | null },
): Promise<Result<EtchTableChanges>> {
  const before = await readTable({ store }, id, from);
  if (!before.ok) return before;
  const after = await readTable({ store }, id, to);
  if (!after.ok) return after;
  const sentences = tableChanges(before.value.table, after.value.table);
  return ok({ from, to: after.value.table.version, sentences });
}
