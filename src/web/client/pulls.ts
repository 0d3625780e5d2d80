import type { QueryClient } from '@tanstack/react-query';
import type { NewPull, PullDifferences, PullDraft } from '../../records/pull.ts';
import type { PullChange, PullEntry, PullPartner } from '../../records/pullTones.ts';
import type { KeptSeriesSettings, SeriesSettings } from '../../records/workSeries.ts';
import { ask, withJson } from './ask.ts';

/** A server that says nothing for so long to a pull counts as out of reach: it is sent again under its id, ms. */
const answerMs = 60_000;

/** All that hangs on the pulls of a work lies under this key, so that one change brings all of it anew. */
export const proofsKey = (work: string) => ['proofs', work] as const;
export const pullsKey = (work: string) => [...proofsKey(work), 'pulls'] as const;
export const pullKey = (work: string, pull: string) => [...pullsKey(work), pull] as const;

/** The pulls of a work, by number. */
export async function listPulls(work: string): Promise<readonly PullEntry[]> {
  return (await ask<{ pulls: readonly PullEntry[] }>(`/api/works/${work}/pulls`)).pulls;
}

/** One pull, an impression of an edition too. */
export function openPull(work: string, pull: string): Promise<PullEntry> {
  return ask(`/api/works/${work}/pulls/${pull}`);
}

/** Keeps a pull; its photographs are measured from then on. */
export function addPull(work: string, draft: Partial<NewPull>): Promise<PullEntry> {
  const signal = AbortSignal.timeout(answerMs);
  return ask(`/api/works/${work}/pulls`, { ...withJson('POST', draft), signal });
}

/** Puts a pull that is kept now among those that the page knows, and has all that hangs on them asked for again. */
export function holdPull(queries: QueryClient, pull: PullEntry): void {
  queries.setQueryData<readonly PullEntry[]>(pullsKey(pull.workId), (held) =>
    held && !pull.putBy
      ? [...held.filter(({ id }) => id !== pull.id), pull].sort((one, other) => one.number - other.number)
      : held,
  );
  void queries.invalidateQueries({ queryKey: proofsKey(pull.workId) });
}

/** Saves what was changed; refused with the pull as it is now where somebody saved since `version`. */
export function savePull(
  work: string,
  pull: string,
  version: number,
  changes: Partial<PullDraft>,
): Promise<PullEntry> {
  return ask(`/api/works/${work}/pulls/${pull}`, withJson('PATCH', { ...changes, version }));
}

/** Lays a pull aside, or lays it out again. */
export function putPullBy(work: string, pull: string, version: number, putBy: boolean): Promise<PullEntry> {
  return ask(`/api/works/${work}/pulls/${pull}/put-by`, withJson('PUT', { version, putBy }));
}

/** Has the photographs of a pull measured again, or no further. */
export function tellMeasuring(work: string, pull: string, act: 'measure' | 'stop'): Promise<PullEntry> {
  return ask(`/api/works/${work}/pulls/${pull}/${act}`, { method: 'POST' });
}

/** What else changed since the pull before. */
export function readSince(work: string, pull: string): Promise<PullDifferences> {
  return ask(`/api/works/${work}/pulls/${pull}/since`);
}

/** A pull beside the stone, or beside another pull. */
export function readAgainst(work: string, pull: string, partner: PullPartner): Promise<PullChange> {
  return ask(againstAddress(work, pull, partner));
}

/** Where one of the two maps of such a comparison lies. */
export function mapAddress(work: string, pull: string, partner: PullPartner, name: string): string {
  return `${againstAddress(work, pull, partner)}/files/${name}`;
}

function againstAddress(work: string, pull: string, partner: PullPartner): string {
  return `/api/works/${work}/pulls/${pull}/against/${partner}`;
}

/** Tolerance, areas, reference and best pull of a work's series. */
export function readSeriesSettings(work: string): Promise<KeptSeriesSettings> {
  return ask(`/api/works/${work}/series/measure`);
}

export function saveSeriesSettings(
  work: string,
  version: number,
  changes: Partial<SeriesSettings>,
): Promise<KeptSeriesSettings> {
  return ask(`/api/works/${work}/series/measure`, withJson('PATCH', { ...changes, version }));
}
