import type { KnownHolds } from '../../records/knownHolds.ts';
import { ask } from './ask.ts';

export const knownHoldsKey = ['known-holds'] as const;

/** What this room found of media and etches. */
export function openKnownHolds(): Promise<KnownHolds> {
  return ask('/api/known-holds');
}
