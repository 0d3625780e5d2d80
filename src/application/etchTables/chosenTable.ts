import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchTable } from '../../records/etch.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';

/** The table that a plan names, at the version it names, else the newest; or `reference-unknown` with the field. */
export async function chosenTable(
  records: Pick<KeptRecords, 'etchTables'>,
  { tableId, tableVersion }: { readonly tableId: string; readonly tableVersion: number | null },
): Promise<Result<EtchTable>> {
  const found = await records.etchTables.find(tableId, tableVersion);
  if (found !== null) return ok(found.table);
  const known = tableVersion !== null && (await records.etchTables.find(tableId)) !== null;
  const id = known ? `${tableId}, issue ${tableVersion}` : tableId;
  return fail(failure('reference-unknown', { what: 'etch table', id }, known ? 'tableVersion' : 'tableId'));
}
