import type {
  CuratedPrint,
  Edition,
  EditionDraft,
  EditionPlan,
  LedgerEntry,
  LedgerEntryInput,
} from '../../records/edition.ts';
import { ask, withJson } from './ask.ts';

export const editionsKey = (work: string) => ['editions', work] as const;
export const editionKey = (id: string) => ['edition', id] as const;
export const editionPlanKey = (id: string) => ['edition-plan', id] as const;
export const ledgerKey = (id: string) => ['ledger', id] as const;

/** The editions of a work, newest first, archived ones too. */
export async function listEditions(work: string): Promise<readonly Edition[]> {
  return (await ask<{ editions: readonly Edition[] }>(`/api/works/${work}/editions`)).editions;
}

/** Enters an edition; what is left out is not known yet. */
export function addEdition(work: string, draft: Pick<EditionDraft, 'title' | 'size'>): Promise<Edition> {
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

/** A server that says nothing for so long counts as out of reach, ms. */
const patienceMs = 10_000;

/** Logs one entry; resolves once it is on the disk. */
export function sendLedgerEntry(id: string, entry: LedgerEntryInput): Promise<LedgerEntry> {
  return ask(`/api/editions/${id}/ledger`, {
    ...withJson('POST', entry),
    signal: AbortSignal.timeout(patienceMs),
  });
}
