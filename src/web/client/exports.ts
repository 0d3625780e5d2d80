import type { ExportDescription } from '../../records/exportDescription.ts';
import { ask } from './ask.ts';
import { FailedRequest, failureFromBody } from './shownFailure.ts';
import { listTestStones } from './testStones.ts';

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

export const sealedStonesKey = ['sealed-stones'] as const;

/** Names of the test stones whose lists are sealed still: an export says what their patches got. */
export async function sealedStones(signal?: AbortSignal): Promise<readonly string[]> {
  const names: string[] = [];
  for (let after: string | null = null; ; ) {
    const { testStones, next } = await listTestStones({ search: '', putBy: 'all' }, after, signal);
    names.push(...testStones.filter(({ list }) => list?.sealed).map(({ name }) => name));
    if (next === null) return names;
    after = next;
  }
}
