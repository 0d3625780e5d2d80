import type { KitDraft, KitEntry, KitTool, LastPick } from '../../records/kit.ts';
import { ask, withJson } from './ask.ts';
import { pageAddress } from './pages.ts';

export const kitKey = ['kit'] as const;
export const lastPicksKey = ['last-picks'] as const;

/** More tools of one kind than a studio keeps. */
const mostOfATool = 200;

/** The tools or set-ups of a kind that are in use, newest first. */
export async function listKit(tool: KitTool, signal?: AbortSignal): Promise<readonly KitEntry[]> {
  const query = { search: '', archived: 'no' } as const;
  const path = pageAddress('/api/kit', query, null, { tool, limit: `${mostOfATool}` });
  return (await ask<{ kit: readonly KitEntry[] }>(path, signal ? { signal } : {})).kit;
}

/** Puts a tool or set-up into the kit. */
export function addKit(draft: KitDraft): Promise<KitEntry> {
  return ask('/api/kit', withJson('POST', draft));
}

/** What was picked last in any run, one of each tool. */
export async function readLastPicks(): Promise<readonly LastPick[]> {
  return (await ask<{ picks: readonly LastPick[] }>('/api/kit/last-picks')).picks;
}
