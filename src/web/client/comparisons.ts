import type { ComparisonEntry, ComparisonRequest, ComparisonSummary } from '../../records/comparisonEntry.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

/** One page of the list, newest first; `next` asks for the page after it, null at the end. */
export interface ComparisonPage {
  readonly comparisons: readonly ComparisonSummary[];
  readonly next: string | null;
}

/** One page of the comparisons whose title or finding holds `search` (empty: all), after the place `after`. */
export function listComparisons(search: string, after: string | null, limit = 24): Promise<ComparisonPage> {
  const query = new URLSearchParams({ limit: String(limit) });
  if (search !== '') query.set('search', search);
  if (after !== null) query.set('after', after);
  return ask(`/api/comparisons?${query}`);
}

/** One comparison whole. */
export function openComparison(id: string): Promise<ComparisonEntry> {
  return ask(`/api/comparisons/${id}`);
}

/** Enters a comparison; measuring starts by itself. */
export function addComparison(request: ComparisonRequest): Promise<ComparisonEntry> {
  return ask('/api/comparisons', withJson('POST', request));
}

/** Takes a comparison and what was measured for it out of the room. */
export function deleteComparison(id: string): Promise<void> {
  return ask(`/api/comparisons/${id}`, { method: 'DELETE' });
}

/** Measures again. */
export function startMeasuring(id: string): Promise<void> {
  return ask(`/api/comparisons/${id}/measuring`, { method: 'POST' });
}

/** Stops a measurement that waits or runs. */
export function stopMeasuring(id: string): Promise<void> {
  return ask(`/api/comparisons/${id}/measuring`, { method: 'DELETE' });
}

/** Where a file of a comparison lies; `widthPx` asks for a picture no wider than that. */
export function comparisonFile(id: string, name: string, widthPx?: number): string {
  const address = `/api/comparisons/${id}/files/${name}${widthPx === undefined ? '' : `?width=${widthPx}`}`;
  // What holds words is set in those of the page; pictures and the record are the same in all.
  return /\.(pdf|svg)$/.test(name) ? inPageWords(address) : address;
}

/** Where everything of a comparison lies as one archive. */
export function comparisonDownload(id: string): string {
  return `/api/comparisons/${id}/download`;
}
