import type { ExportDescription } from '../../records/exportDescription.ts';
import { ask } from './ask.ts';
import { FailedRequest, failureFromBody } from './shownFailure.ts';

export const exportColumnsKey = ['export-columns'] as const;

/** What an export holds, column by column. */
export function readExportColumns(): Promise<ExportDescription> {
  return ask('/api/export/columns');
}

/** Every record as CSV and JSON, packed; resolves once it is here whole. */
export async function fetchExport(): Promise<Blob> {
  const answer = await fetch('/api/export.zip');
  if (answer.ok) return answer.blob();
  throw new FailedRequest(failureFromBody(answer.status, await answer.json().catch(() => null)));
}
