import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { LedgerEntry, LedgerEntryInput } from '../../records/edition.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchEdition } from './findEditions.ts';

/**
 * Keeps what happened at the press. Nothing well-formed is refused: it happened. Sent again under the same client id,
 * gives the entry as it was kept first.
 * @returns `not-found` without the edition, `photograph-unknown` for a photograph that is not kept here
 */
export function logImpression(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  editionId: string,
  input: LedgerEntryInput,
): Promise<Result<LedgerEntry>> {
  return store.decide(async (records) => {
    const kept = await records.ledgers.entryOf(editionId, input.clientId);
    if (kept) return ok(kept);
    if ((await records.editions.find(editionId)) === null) return fail(noSuchEdition());
    const photograph = (input.payload as { readonly photograph?: string | null }).photograph ?? null;
    if (photograph !== null && (await records.photographs.find(photograph)) === null) {
      return fail(failure('photograph-unknown', { use: 'impression' }, 'payload.photograph'));
    }
    const sequence = (await records.ledgers.last(editionId)) + 1;
    const entry = { ...input, sequence, receivedAt: now().toISOString() } as LedgerEntry;
    await records.ledgers.addEntry(editionId, entry);
    return ok((await records.ledgers.entryOf(editionId, input.clientId))!);
  });
}
