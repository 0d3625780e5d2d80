import type { QueryClient } from '@tanstack/react-query';
import type { CuratedPrint, Edition, EditionDraft } from '../../records/edition.ts';
import type { EditionPlan } from '../../records/editionPlan.ts';
import type { EditionReadings } from '../../records/editionReadings.ts';
import type { EditionStart } from '../../records/editionStart.ts';
import type { LedgerEntry, LedgerEntryInput } from '../../records/ledger.ts';
import { ask, withJson } from './ask.ts';
import { proofsKey } from './pulls.ts';

export const editionsKey = (work: string) => ['editions', work] as const;
/** Among the work's proofs, so that good to print given or withdrawn brings it anew. */
export const editionStartKey = (work: string) => [...proofsKey(work), 'edition start'] as const;
export const editionKey = (id: string) => ['edition', id] as const;
export const editionPlanKey = (id: string) => ['edition-plan', id] as const;
export const ledgerKey = (id: string) => ['ledger', id] as const;
/** The photographs of all editions lie under the first word, so that one that was read brings them anew. */
export const readingsKey = (id: string) => [...allReadings, id] as const;
export const allReadings = ['edition-readings'] as const;

/** The editions of a work, newest first, those put by too. */
export async function listEditions(work: string): Promise<readonly Edition[]> {
  return (await ask<{ editions: readonly Edition[] }>(`/api/works/${work}/editions`)).editions;
}

/** What an edition may start from: the pull that is good to print, its paper, the drawing. */
export function readEditionStart(work: string): Promise<EditionStart> {
  return ask(`/api/works/${work}/edition-start`);
}

/** What is needed to enter an edition, and what may be said with it. */
export type NewEdition = Pick<EditionDraft, 'title' | 'size'> &
  Partial<Omit<EditionDraft, 'paper'>> & { readonly paper?: Partial<EditionDraft['paper']> };

/** Enters an edition; what is left out is not known yet. */
export function addEdition(work: string, draft: NewEdition): Promise<Edition> {
  return ask(`/api/works/${work}/editions`, withJson('POST', draft));
}

/** One edition with its prints. */
export function openEdition(id: string): Promise<Edition> {
  return ask(`/api/editions/${id}`);
}

/** Saves an edition; refused with the edition as it is now where somebody saved since `version`. */
export function saveEdition(id: string, version: number, changes: Partial<EditionDraft>): Promise<Edition> {
  return ask(`/api/editions/${id}`, withJson('PATCH', { ...changes, version }));
}

/** Says what becomes of the impressions. */
export function savePrints(id: string, version: number, prints: readonly CuratedPrint[]): Promise<Edition> {
  return ask(`/api/editions/${id}/prints`, withJson('PUT', { version, prints }));
}

/** What the edition needs. */
export function openEditionPlan(id: string): Promise<EditionPlan> {
  return ask(`/api/editions/${id}/plan`);
}

/** All that an edition's ledger holds, in order. */
export async function readLedger(id: string): Promise<readonly LedgerEntry[]> {
  return (await ask<{ entries: readonly LedgerEntry[] }>(`/api/editions/${id}/ledger`)).entries;
}

/** The photographs of impressions and what was read from them, beside the approved pull. */
export function readImpressions(id: string): Promise<EditionReadings> {
  return ask(`/api/editions/${id}/readings`);
}

/** Puts entries that were kept into those that the page holds, each once: nothing leaves a ledger. */
export function mergedEntries(
  held: readonly LedgerEntry[] | undefined,
  more: readonly LedgerEntry[],
): readonly LedgerEntry[] {
  const bySequence = new Map([...(held ?? []), ...more].map((entry) => [entry.sequence, entry]));
  return [...bySequence.values()].sort((one, other) => one.sequence - other.sequence);
}

/** Brings an entry that another device logged into the ledger that the page holds. */
export function holdLedgerEntry(queries: QueryClient, id: string, entry: LedgerEntry): void {
  queries.setQueryData<readonly LedgerEntry[]>(ledgerKey(id), (held) => held && mergedEntries(held, [entry]));
  void queries.invalidateQueries({ queryKey: readingsKey(id) });
}

/** Takes an edition off its work, or brings it back. */
export function putEditionBy(id: string, version: number, putBy: boolean): Promise<Edition> {
  return ask(`/api/editions/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** A server that says nothing for so long counts as out of reach, ms. */
const patienceMs = 10_000;

/** Logs one entry; resolves once it is on the disk. */
export function sendLedgerEntry(id: string, entry: LedgerEntryInput): Promise<LedgerEntry> {
  return ask(`/api/editions/${id}/ledger`, {
    ...withJson('POST', entry),
    signal: AbortSignal.timeout(patienceMs),
  });
}
