import type { InkDraft, InkEntry, InkVerdict } from '../../records/ink.ts';
import type { InkAnswer } from '../../records/inkAnswer.ts';
import { ask, withJson } from './ask.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const inksKey = ['inks'] as const;
export const inkKey = (id: string) => ['ink', id] as const;

/** One page of the mixes of ink, newest first. */
export interface InkPage {
  readonly inks: readonly InkEntry[];
  readonly next: string | null;
}

/** One page of the mixes with a verdict (null: with any or none). */
export function listInks(
  query: ListQuery & { readonly verdict: InkVerdict | null },
  after: string | null,
  signal?: AbortSignal,
): Promise<InkPage> {
  return ask(pageAddress('/api/inks', query, after, { verdict: query.verdict }), signal ? { signal } : {});
}

/** The newest mix that printed well, for a work or (null) for any. */
export async function lastGoodInk(work: string | null): Promise<InkEntry | null> {
  const asked = { search: '', putBy: 'all' } as const;
  const narrowed = { verdict: 'good', work, limit: '1' };
  return (await ask<InkPage>(pageAddress('/api/inks', asked, null, narrowed))).inks[0] ?? null;
}

/** Where to start the ink of a work from, and grams for so many pulls. */
export function inkForWork(work: string, proofs: number, edition: number): Promise<InkAnswer> {
  return ask(`/api/works/${work}/ink?proofs=${proofs}&edition=${edition}`);
}

export function openInk(id: string): Promise<InkEntry> {
  return ask(`/api/inks/${id}`);
}

export function addInk(ink: InkDraft): Promise<InkEntry> {
  return ask('/api/inks', withJson('POST', ink));
}

/** Saves what was changed; refused with the mix as it is now where somebody saved since `version`. */
export function saveInk(id: string, version: number, changes: Partial<InkDraft>): Promise<InkEntry> {
  return ask(`/api/inks/${id}`, withJson('PATCH', { ...changes, version }));
}

/** Takes a mix off the list, or brings it back. */
export function putInkBy(id: string, version: number, putBy: boolean): Promise<InkEntry> {
  return ask(`/api/inks/${id}/put-by`, withJson('PUT', { version, putBy }));
}
