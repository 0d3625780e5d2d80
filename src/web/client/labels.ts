import type { BatchEntry } from '../../records/batch.ts';
import type { Edition } from '../../records/edition.ts';
import type { Paper } from '../../records/paper.ts';
import type { StoneSummary } from '../../records/stoneEntry.ts';
import { ask } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

/** What labels are wanted for, by ids. */
export interface LabelsChosen {
  readonly stones: readonly string[];
  readonly batches: readonly string[];
  readonly editions: readonly string[];
  /** Impressions of those editions; empty: every curated print. */
  readonly prints: readonly string[];
}

export const labelledKey = ['labelled'] as const;

/** What labels can be made for: everything in use. */
export interface Labelled {
  readonly stones: readonly StoneSummary[];
  readonly batches: readonly BatchEntry[];
  readonly editions: readonly Edition[];
}

/** As many as a list gives at once: more than a room has. */
const most = 500;

/** The stones, batches and editions in use. */
export async function readLabelled(): Promise<Labelled> {
  const [{ stones }, { batches }, { editions }] = await Promise.all([
    ask<Pick<Labelled, 'stones'>>(`/api/stones?limit=${most}`),
    ask<Pick<Labelled, 'batches'>>(`/api/batches?limit=${most}`),
    ask<Pick<Labelled, 'editions'>>('/api/editions'),
  ]);
  return { stones, batches, editions };
}

/** Where the sheet of these labels lies. */
export function labelSheetAddress(chosen: LabelsChosen, paper: Paper): string {
  return inPageWords(withIds('/api/labels.pdf', chosen, { paper }));
}

/** The page on which labels are chosen, with some chosen already. */
export function labelsPage(chosen: Partial<LabelsChosen>): string {
  return withIds('/labels', chosen);
}

function withIds(path: string, chosen: Partial<LabelsChosen>, more: Record<string, string> = {}): string {
  const query = new URLSearchParams();
  for (const [what, ids] of Object.entries(chosen)) if (ids.length > 0) query.set(what, ids.join(','));
  for (const [field, value] of Object.entries(more)) query.set(field, value);
  const asked = query.toString();
  return asked === '' ? path : `${path}?${asked}`;
}
