import type { ExportDescription } from '../../records/exportDescription.ts';
import { exportKinds } from './exportKinds.ts';

/** What an export's files hold, column by column: from the same list that writes them. */
export function exportColumns(): ExportDescription {
  return {
    kinds: exportKinds.map(({ name, words, columns }) => ({
      name,
      words,
      columns: columns.map((column) => ({ name: column.name, unit: column.unit, words: column.words })),
    })),
  };
}
