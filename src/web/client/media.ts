import type { MediumEntry } from '../../records/medium.ts';
import { ask, withJson } from './ask.ts';

export const mediaKey = ['media'] as const;

/** What can be drawn with: the starting catalogue, then the studio's own. */
export async function listMedia(): Promise<readonly MediumEntry[]> {
  return (await ask<{ media: readonly MediumEntry[] }>('/api/media')).media;
}

/** Adds a medium of the studio's own; its id never changes. */
export function addMedium(medium: Pick<MediumEntry, 'id' | 'name' | 'rule'>): Promise<MediumEntry> {
  return ask('/api/media', withJson('POST', medium));
}

/** Takes a medium out of the catalogue; refused while a work has a zone in it. */
export function removeMedium(id: string): Promise<void> {
  return ask(`/api/media/${id}`, { method: 'DELETE' });
}
