import type { EtchRow } from '../../records/etch.ts';
import type { EtchTableChanges, EtchTableIssue, EtchTableSummary } from '../../records/etchTableEntry.ts';
import { ask, withJson } from './ask.ts';

export const tablesKey = ['etch-tables'] as const;
export const tableKey = (id: string) => ['etch-table', id] as const;

/** One kept version of a table, named in passing. */
export interface TableIssueMention {
  readonly version: number;
  readonly name: string;
  readonly savedAt: string;
}

/** All etch tables, the starting ones among them. */
export async function listTables(): Promise<readonly EtchTableSummary[]> {
  return (await ask<{ tables: readonly EtchTableSummary[] }>('/api/etch-tables')).tables;
}

/** The newest version of a table. */
export function openTable(id: string): Promise<EtchTableIssue> {
  return ask(`/api/etch-tables/${id}`);
}

/** Makes the studio's own copy of a table. */
export function copyTable(from: string, name: string): Promise<EtchTableIssue> {
  return ask('/api/etch-tables', withJson('POST', { name, from }));
}

/** Saves the next version of the studio's own table; refused where somebody saved since `version`. */
export function saveTable(
  id: string,
  version: number,
  table: { readonly name: string; readonly rows: readonly EtchRow[] },
): Promise<EtchTableIssue> {
  return ask(`/api/etch-tables/${id}`, withJson('PUT', { ...table, version }));
}

/** The issues of a table, newest first. */
export async function listTableIssues(id: string): Promise<readonly TableIssueMention[]> {
  const answer = await ask<{ issues: readonly TableIssueMention[] }>(`/api/etch-tables/${id}/issues`);
  return answer.issues;
}

/** What changed from one issue to another, as sentences. */
export function tableChangesBetween(id: string, from: number, to: number): Promise<EtchTableChanges> {
  return ask(`/api/etch-tables/${id}/changes?from=${from}&to=${to}`);
}
