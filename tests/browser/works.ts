import { inject } from 'vitest';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { enteredStone } from './records.ts';

/** A zone of a wash sky, with another outline where `lowMm` is given. */
export const sky = (lowMm = 180) => ({
  id: 'sky',
  name: 'Sky',
  medium: 'tusche-water',
  deposit: 'light',
  polygonMm: [
    [40, 40],
    [360, 40],
    [360, lowMm],
    [40, lowMm],
  ],
});

export const post = {
  id: 'post',
  name: 'Post',
  medium: 'solid',
  polygonMm: [
    [120, 220],
    [140, 220],
    [140, 400],
    [120, 400],
  ],
};

/** Starts a work on a stone of its own, past the screens. */
export async function startedWork(stone: string, more: object = {}): Promise<WorkEntry> {
  const { id } = await enteredStone(stone);
  return sent('POST', '/api/works', { title: 'Low Water', stoneId: id, stage: 'drawn', ...more });
}

export function keptWork(id: string): Promise<WorkEntry> {
  return sent('GET', `/api/works/${id}`);
}

/** Saves as a second person at another screen would. */
export async function savedWork(id: string, changes: object): Promise<WorkEntry> {
  const { version } = await keptWork(id);
  return sent('PATCH', `/api/works/${id}`, { version, ...changes });
}

export function plannedEtch(id: string, choices: object = {}): Promise<KeptPlan> {
  return sent('POST', `/api/works/${id}/plans`, choices);
}

/** Sends what a screen would, past the screens. */
export function sentTo<T>(path: string, body: object): Promise<T> {
  return sent('POST', path, body);
}

async function sent<T>(method: string, path: string, body?: object): Promise<T> {
  const response = await fetch(inject('address') + path, {
    method,
    ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
  return (await response.json()) as T;
}
