import type { MediumEntry } from '../../records/medium.ts';
import { ask } from './ask.ts';

export const mediaKey = ['media'] as const;

/** What can be drawn with: the starting catalogue, then the studio's own. */
export async function listMedia(): Promise<readonly MediumEntry[]> {
  return (await ask<{ media: readonly MediumEntry[] }>('/api/media')).media;
}
