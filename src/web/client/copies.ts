import type { CopiesState } from '../../records/copies.ts';
import { ask, withJson } from './ask.ts';

export const copiesKey = ['copies'] as const;

/** How the daily copies stand. */
export function readCopies(): Promise<CopiesState> {
  return ask('/api/copies');
}

/** Sends copies to a folder of the machine from now on; null: no more are made. */
export function sendCopiesTo(folder: string | null): Promise<CopiesState> {
  return ask('/api/copies/folder', withJson('PUT', { folder }));
}

/** Begins to make today's copy. */
export function copyNow(): Promise<CopiesState> {
  return ask('/api/copies', { method: 'POST' });
}

/** Begins to read a day's copy back. */
export function checkCopy(day: string): Promise<CopiesState> {
  return ask(`/api/copies/${day}/check`, { method: 'POST' });
}
