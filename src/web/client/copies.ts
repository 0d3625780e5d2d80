import type { CopiesState } from '../../records/copies.ts';
import { ask } from './ask.ts';

export const copiesKey = ['copies'] as const;

/** How the daily copies stand. */
export function readCopies(): Promise<CopiesState> {
  return ask('/api/copies');
}
