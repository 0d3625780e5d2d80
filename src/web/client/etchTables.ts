import type { EtchRow } from '../../records/etch.ts';
import type { EtchTableChanges, EtchTableSummary, EtchTableVersion } from '../../records/etchTableEntry.ts';
import { ask, withJson } from './ask.ts';

export const tablesKey = ['etch-tables'] as const;
export const tableKey = (id: string) => ['etch-table', id] as const;

/** One kept version of a table, named in passing. */
export interface TableVersionMention {
  readonly version: number;
  readonly name: string;
  readonly savedAt: string;
}

/** All etch tables, the starting ones among them. */
export async function listTables(): Promise<readonly EtchTableSummary[]> {
  return (await ask<{ tables: readonly EtchTableSummary[] }>('/api/etch-tables')).tables;
}

/** The newest version of a table. */
export function openTable(id: string): Promise<EtchTableVersion> {
  return ask(`/api/etch-tables/${id}`);
}

/** Makes the studio's own copy of a table. */
export function copyTable(from: string, name: string): Promise<EtchTableVersion> {
  return ask('/api/etch-tables', withJson('POST', { name, from }));
}

/** Saves the next version of the studio's own table; refused where somebody saved since `version`. */
export function saveTable(
  id: string,
  version: number,
  table: { readonly name: string; readonly rows: readonly EtchRow[] },
): Promise<EtchTableVersion> {
  return ask(`/api/etch-tables/${id}`, withJson('PUT', { ...table, version }));
}

/** The versions of a table, newest first. */
export async function listTableVersions(id: string): Promise<readonly TableVersionMention[]> {
  const answer = await ask<{ versions: readonly TableVersionMention[] }>(`/api/etch-tables/${id}/versions`);
  return answer.versions;
}

/** What changed from one version to another, as sentences. */
export function tableChangesBetween(id: string, from: number, to: number): Promise<EtchTableChanges> {
  return ask(`/api/etch-tables/${id}/changes?from=${from}&to=${to}`);
}
