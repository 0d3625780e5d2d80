import type { StoneDraft, StoneEntry, StoneSummary } from '../../records/stoneEntry.ts';
import { ask, withJson } from './ask.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const stonesKey = ['stones'] as const;
export const stoneKey = (id: string) => ['stone', id] as const;

/** One page of the rack, by name; `next` asks for the page after it, null at the end. */
export interface StonePage {
  readonly stones: readonly StoneSummary[];
  readonly next: string | null;
}

/** What a person writes about a new stone; the rest starts empty. */
export type NewStone = Pick<StoneDraft, 'name' | 'widthMm' | 'heightMm'> & Partial<StoneDraft>;

/** One page of the stones, after the place `after`. */
export function listStones(
  query: ListQuery,
  after: string | null,
  signal?: AbortSignal,
  limit = 24,
): Promise<StonePage> {
  return ask(pageAddress('/api/stones', query, after, { limit: String(limit) }), signal ? { signal } : {});
}

/** One stone whole. */
export function openStone(id: string): Promise<StoneEntry> {
  return ask(`/api/stones/${id}`);
}

/** Enters a stone. */
export function addStone(stone: NewStone): Promise<StoneEntry> {
  return ask('/api/stones', withJson('POST', stone));
}

/** Saves what was changed; refused with the stone as it is now where somebody saved since `version`. */
export function saveStone(id: string, version: number, changes: Partial<StoneDraft>): Promise<StoneEntry> {
  return ask(`/api/stones/${id}`, withJson('PATCH', { ...changes, version }));
}

/** Takes a stone off the rack, or brings it back. */
export function putStoneBy(id: string, version: number, putBy: boolean): Promise<StoneEntry> {
  return ask(`/api/stones/${id}/put-by`, withJson('PUT', { version, putBy }));
}
