import type { WorkDraft, WorkInput } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { Zone } from '../../records/zone.ts';
import { ask, withJson } from './ask.ts';
import { FailedRequest } from './shownFailure.ts';

export const workKey = (id: string) => ['work', id] as const;

/** One work whole, with its stone and what follows from its zones. */
export function openWork(id: string): Promise<WorkEntry> {
  return ask(`/api/works/${id}`);
}

/** Starts a work, or enters one halfway with what is known of its past. */
export function addWork(
  work: Pick<WorkInput, 'title' | 'stoneId' | 'origin' | 'head' | 'note'>,
): Promise<WorkEntry> {
  return ask('/api/works', withJson('POST', work));
}

/** Saves what was changed; refused with the work as it is now where somebody saved since `version`. */
export function saveWork(id: string, version: number, changes: Partial<WorkDraft>): Promise<WorkEntry> {
  return ask(`/api/works/${id}`, withJson('PATCH', { ...changes, version }));
}

/** Takes a work off the list, or brings it back. */
export function putWorkBy(id: string, version: number, putBy: boolean): Promise<WorkEntry> {
  return ask(`/api/works/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** Puts the zones of a zones.json in place of a work's own. */
export function importZones(id: string, version: number, zones: readonly Zone[]): Promise<WorkEntry> {
  return ask(`/api/works/${id}/zones.json`, withJson('PUT', { version, zones }));
}

/** Where a work's zones lie as zones.json. */
export function zonesAddress(id: string): string {
  return `/api/works/${id}/zones.json`;
}

/** The work as somebody else saved it, where a save came second; null for every other refusal. */
export function savedMeanwhile(thrown: unknown): WorkEntry | null {
  if (!(thrown instanceof FailedRequest) || thrown.failure.code !== 'stale-save') return null;
  return (thrown.current as WorkEntry | null) ?? null;
}
