import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { EtchRow, EtchTable } from '../../records/etch.ts';
import type { EtchTableIssue } from '../../records/etchTableEntry.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { refused, type Saved, type SavingParts, stale } from '../saving.ts';
import { noSuchTable } from './findTables.ts';
import { judgeTableRows } from './judgeTableRows.ts';

/**
 * Copies a table's newest version: the studio's own from then on, at version 1.
 * @returns `reference-unknown` or `name-taken` with the field
 */
export function copyTable(
  { store, now, newId }: SavingParts,
  { name, from }: { readonly name: string; readonly from: string },
): Promise<Saved<EtchTableIssue>> {
  return store.decide(async (records) => {
    const original = await records.etchTables.find(from);
    if (original === null) {
      return refused(failure('reference-unknown', { what: 'etch table', id: from }, 'from'));
    }
    const table: EtchTable = { ...original.table, id: newId(), name, version: 1 };
    const fault = await judgeName(records, table);
    if (fault) return refused(fault);
    const copy = { table, savedAt: now().toISOString(), starting: false };
    await records.etchTables.add(copy);
    return ok(copy);
  });
}

/**
 * Saves a studio's own table: it becomes the next version, and plans keep the version that they were made with.
 * @returns `table-fixed` for a starting table, `not-found`, `table-malformed`, `name-taken`, or `stale-save` with the
 *   newest version
 */
export function saveTable(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  id: string,
  draft: { readonly version: number; readonly name: string; readonly rows: readonly EtchRow[] },
): Promise<Saved<EtchTableIssue>> {
  return store.decide<EtchTableIssue, SaveRefusal<EtchTableIssue>>(async (records) => {
    const kept = await records.etchTables.find(id);
    if (kept === null) return refused(noSuchTable());
    if (kept.starting) return refused(failure('table-fixed', { name: kept.table.name }));
    if (kept.table.version !== draft.version) {
      const versions = { yours: draft.version, kept: kept.table.version };
      return stale(`the table ${kept.table.name}`, versions, kept);
    }
    const table: EtchTable = { id, name: draft.name, version: draft.version + 1, rows: draft.rows };
    const fault = judgeTableRows(table.rows, 'rows') ?? (await judgeName(records, table));
    if (fault) return refused(fault);
    const next = { table, savedAt: now().toISOString(), starting: false };
    await records.etchTables.add(next);
    return ok(next);
  });
}

async function judgeName(
  { etchTables }: Pick<KeptRecords, 'etchTables'>,
  { id, name }: EtchTable,
): Promise<Failure | null> {
  const folded = (text: string) => text.trim().toLowerCase();
  const all = await etchTables.list();
  const taken = all.some((other) => other.id !== id && folded(other.name) === folded(name));
  return taken ? failure('name-taken', { what: 'table', name }, 'name') : null;
}
