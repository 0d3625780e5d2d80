import { exportToFolder } from '../application/export/exportToFolder.ts';
import { sealedInExport } from '../application/export/sealedInExport.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

export const exportOptions: OptionList = { data: './data', to: 'records' };

/** `stonetone export`: writes every record as CSV and JSON, also while the folder is served. */
export async function exportRecords(words: readonly string[]): Promise<number> {
  const given = readArguments(words, exportOptions);
  if (!given.ok) return reportFailure(given.error);
  const data = required(given.value, 'data', exportOptions.data!);
  if (!data.ok) return reportFailure(data.error);
  const to = required(given.value, 'to', exportOptions.to!);
  if (!to.ok) return reportFailure(to.error);
  const sealed = await sealedInExport(data.value);
  if (sealed !== null) console.error(sealed);
  const written = await exportToFolder(data.value, to.value);
  if (!written.ok) return reportFailure(written.error);
  const counts = Object.values(written.value);
  const records = counts.reduce((sum, count) => sum + count, 0);
  console.log(`Wrote ${records} records of ${counts.length} kinds to ${to.value}.`);
  return exitDone;
}
