import { inject, TestRunner } from 'vitest';
import type { BatchEntry } from '../../src/records/batch.ts';
import type { EtchTableIssue } from '../../src/records/etchTableEntry.ts';
import type { StoneEntry, StoneSummary } from '../../src/records/stoneEntry.ts';

/** Sends JSON past the screens, as a second person at another screen would; fails where it is refused. */
async function sent<T>(method: 'GET' | 'POST' | 'PATCH' | 'PUT', path: string, body?: object): Promise<T> {
  const response = await fetch(inject('address') + path, {
    method,
    ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
  return (await response.json()) as T;
}

/** Enters a stone of that name. Where the check is tried once more, the stone of its first try makes way. */
export async function enteredStone(name: string, more: object = {}): Promise<StoneEntry> {
  if ((TestRunner.getCurrentTest()?.result?.retryCount ?? 0) > 0) {
    const { stones } = await sent<{ stones: readonly StoneSummary[] }>('GET', '/api/stones?limit=500');
    const first = stones.find((stone) => stone.name === name);
    if (first) await savedStone(first.id, { name: `first try ${first.id}` });
  }
  return sent('POST', '/api/stones', { name, widthMm: 400, heightMm: 500, ...more });
}

export function keptStone(id: string): Promise<StoneEntry> {
  return sent('GET', `/api/stones/${id}`);
}

export async function savedStone(id: string, changes: object): Promise<StoneEntry> {
  const { version } = await keptStone(id);
  return sent('PATCH', `/api/stones/${id}`, { version, ...changes });
}

export function copiedTable(name: string): Promise<EtchTableIssue> {
  return sent('POST', '/api/etch-tables', { name, from: 'tannic' });
}

/** Saves a table with the longest gap of one rule changed. */
export async function savedGap(
  id: string,
  strength: string,
  moveWithinSeconds: number,
): Promise<EtchTableIssue> {
  const { table } = await sent<EtchTableIssue>('GET', `/api/etch-tables/${id}`);
  const rows = table.rows.map((row) => (row.strength === strength ? { ...row, moveWithinSeconds } : row));
  return sent('PUT', `/api/etch-tables/${id}`, { version: table.version, name: table.name, rows });
}

export function loggedBatch(batch: object): Promise<BatchEntry> {
  return sent('POST', '/api/batches', batch);
}

export async function savedBatch(id: string, changes: object): Promise<BatchEntry> {
  const { version, kind } = await sent<BatchEntry>('GET', `/api/batches/${id}`);
  return sent('PATCH', `/api/batches/${id}`, { version, kind, ...changes });
}
