import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { inject } from 'vitest';
import type { PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { keptPair } from './pair.ts';
import { enteredStone } from './records.ts';

export const rag = { id: null, words: 'rag 250' };

/** Enters a pull past the screens, on rag unless told. */
export function pulled(work: WorkEntry, number: number, more: object): Promise<PullEntry> {
  return sent('POST', `/api/works/${work.id}/pulls`, { number, paper: rag, ...more });
}

/** A work whose drawn stone is photographed with its marks, as the kept pair has it. */
export async function printedWork(name: string): Promise<WorkEntry> {
  const pair = keptPair('measured');
  const [widthMm, heightMm] = pair.sizeMm;
  const { id } = await enteredStone(name, { widthMm, heightMm });
  const photograph = await uploaded(pair.stone);
  const zones = (
    JSON.parse(readFileSync(pair.zones, 'utf8')) as { id: string; name: string; polygonMm: unknown }[]
  )
    .filter((zone) => zone.id in deposits)
    .map((zone) => ({ ...zone, medium: 'crayon-3', deposit: deposits[zone.id] }));
  return sent('POST', '/api/works', {
    title: 'Low Water',
    stoneId: id,
    stage: 'drawn',
    rectangle: { offsetMm: [0, 0], sizeMm: [widthMm, heightMm] },
    zones,
    photographs: [
      {
        photograph,
        state: 'drawn',
        takenAt: null,
        corners: { of: 'stone', px: pair.stoneCorners },
        note: '',
      },
    ],
  });
}

/** Copies a picture in, and answers its id. */
export async function uploaded(path: string): Promise<string> {
  const form = new FormData();
  // the first name under which a photograph comes in is kept: other checks of the same one look for its own
  form.append('photograph', new Blob([readFileSync(path)]), basename(path));
  const answer = await fetch(`${inject('address')}/api/photographs`, { method: 'POST', body: form });
  return ((await answer.json()) as PhotographEntry).id;
}

const deposits: Readonly<Record<string, string>> = {
  crayon15: 'light',
  crayon45: 'middle',
  crayon75: 'dark',
  solid: 'solid',
};

/** Asks past the screens; fails where it is refused. */
export async function sent<T>(method: 'GET' | 'POST', path: string, body?: object): Promise<T> {
  const response = await fetch(inject('address') + path, {
    method,
    ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
  return (await response.json()) as T;
}
