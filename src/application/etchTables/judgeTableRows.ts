import { type Failure, failure } from '../../foundation/failure.ts';
import type { EtchRow } from '../../records/etch.ts';

/** Judges what the form of a table can't say: it has a row for the ground. Null when usable. */
export function judgeTableRows(rows: readonly EtchRow[], path: string): Failure | null {
  if (rows.some((row) => row.strength === 'ground')) return null;
  const why = 'it has no row for the ground, which is always etched';
  return failure('table-malformed', { why, field: 'rows' }, path);
}
