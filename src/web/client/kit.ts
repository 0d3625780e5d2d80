import type { KitDraft, KitEntry, KitTool, LastInHand } from '../../records/kit.ts';
import { ask, withJson } from './ask.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const kitKey = ['kit'] as const;
export const kitEntryKey = (id: string) => ['kit-entry', id] as const;
export const lastInHandKey = ['last-in-hand'] as const;

/** More tools of one kind than a studio keeps. */
const mostOfATool = 200;

/** The tools or set-ups of a kind that are in use, newest first. */
export async function listKitOf(tool: KitTool, signal?: AbortSignal): Promise<readonly KitEntry[]> {
  const query = { search: '', putBy: 'no' } as const;
  const path = pageAddress('/api/kit', query, null, { tool, limit: `${mostOfATool}` });
  return (await ask<{ kit: readonly KitEntry[] }>(path, signal ? { signal } : {})).kit;
}

/** One page of the kit, newest first. */
export interface KitPage {
  readonly kit: readonly KitEntry[];
  readonly next: string | null;
}

/** One page of the tools and set-ups of a kind (null: of any). */
export function listKit(
  query: ListQuery & { readonly tool: KitTool | null },
  after: string | null,
  signal?: AbortSignal,
): Promise<KitPage> {
  return ask(pageAddress('/api/kit', query, after, { tool: query.tool }), signal ? { signal } : {});
}

/** One tool or set-up. */
export function openKit(id: string): Promise<KitEntry> {
  return ask(`/api/kit/${id}`);
}

/** Saves a tool or set-up; refused with it as it is now where somebody saved since `version`. */
export function saveKit(id: string, version: number, draft: KitDraft): Promise<KitEntry> {
  return ask(`/api/kit/${id}`, withJson('PATCH', { ...draft, version }));
}

/** Takes a tool or set-up out of the kit, or brings it back. */
export function putKitBy(id: string, version: number, putBy: boolean): Promise<KitEntry> {
  return ask(`/api/kit/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** Puts a tool or set-up into the kit. */
export function addKit(draft: KitDraft): Promise<KitEntry> {
  return ask('/api/kit', withJson('POST', draft));
}

/** What was picked last in any run, one of each tool. */
export async function readLastInHand(): Promise<readonly LastInHand[]> {
  return (await ask<{ inHand: readonly LastInHand[] }>('/api/kit/last-in-hand')).inHand;
}
