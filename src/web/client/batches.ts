import type { BatchDraft, BatchEntry, BatchKind } from '../../records/batch.ts';
import { ask, withJson } from './ask.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const batchesKey = ['batches'] as const;
export const batchKey = (id: string) => ['batch', id] as const;

/** One page of the batch log, newest first. */
export interface BatchPage {
  readonly batches: readonly BatchEntry[];
  readonly next: string | null;
}

/** One page of the batches of a kind (null: of any). */
export function listBatches(
  query: ListQuery & { readonly kind: BatchKind | null },
  after: string | null,
  signal?: AbortSignal,
): Promise<BatchPage> {
  return ask(pageAddress('/api/batches', query, after, { kind: query.kind }), signal ? { signal } : {});
}

/** One batch. */
export function openBatch(id: string): Promise<BatchEntry> {
  return ask(`/api/batches/${id}`);
}

/** Logs a batch. */
export function addBatch(batch: BatchDraft): Promise<BatchEntry> {
  return ask('/api/batches', withJson('POST', batch));
}

/** Saves a batch; refused with the batch as it is now where somebody saved since `version`. */
export function saveBatch(id: string, version: number, batch: BatchDraft): Promise<BatchEntry> {
  return ask(`/api/batches/${id}`, withJson('PATCH', { ...batch, version }));
}

/** Takes a batch out of the log, or brings it back. */
export function putBatchBy(id: string, version: number, putBy: boolean): Promise<BatchEntry> {
  return ask(`/api/batches/${id}/put-by`, withJson('PUT', { version, putBy }));
}
