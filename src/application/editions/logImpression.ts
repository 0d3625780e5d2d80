import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { LedgerEntry, LedgerEntryInput } from '../../records/ledger.ts';
import { photographLogged } from '../../studio/editions/photographLogged.ts';
import type { Announcer } from '../announcing.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchEdition } from './findEditions.ts';
import { keepImpressionPhotograph } from './keepImpressionPhotograph.ts';

/** Something was logged in the ledger of an edition. */
export interface LedgerAnnouncement {
  readonly editionId: string;
  readonly entry: LedgerEntry;
}

export type LedgerAnnouncements = Announcer<LedgerAnnouncement>;

type Parts = Pick<SavingParts, 'store' | 'now' | 'newId'> & {
  readonly pullQueue: { wake(): void };
  readonly ledgerEvents: Pick<LedgerAnnouncements, 'announce'>;
};

/**
 * Keeps what happened at the press. Nothing well-formed is refused: it happened. Sent again under the same client id,
 * gives the entry as it was kept first. A photograph of an impression waits to be read as a pull's does.
 * @returns `not-found` without the edition, `photograph-unknown` for a photograph that is not kept here
 */
export async function logImpression(
  { store, now, newId, pullQueue, ledgerEvents }: Parts,
  editionId: string,
  input: LedgerEntryInput,
): Promise<Result<LedgerEntry>> {
  const logged = await store.decide<Logged, Failure>(async (records) => {
    const kept = await records.ledgers.entryOf(editionId, input.clientId);
    if (kept) return ok({ entry: kept, fresh: false });
    const edition = await records.editions.find(editionId);
    if (edition === null) return fail(noSuchEdition());
    const photograph = (input.payload as { readonly photograph?: string | null }).photograph ?? null;
    if (photograph !== null && (await records.photographs.find(photograph)) === null) {
      return fail(failure('photograph-unknown', { use: 'impression' }, 'payload.photograph'));
    }
    const sequence = (await records.ledgers.last(editionId)) + 1;
    const at = now().toISOString();
    const entry = { ...input, sequence, receivedAt: at } as LedgerEntry;
    await records.ledgers.addEntry(editionId, entry);
    const shown = photographLogged(entry);
    if (shown) await keepImpressionPhotograph(records, edition, shown, { id: newId(), at });
    return ok({ entry: (await records.ledgers.entryOf(editionId, input.clientId))!, fresh: true });
  });
  if (!logged.ok) return logged;
  const { entry, fresh } = logged.value;
  if (fresh) {
    ledgerEvents.announce({ editionId, entry });
    if (photographLogged(entry)) pullQueue.wake();
  }
  return ok(entry);
}

interface Logged {
  readonly entry: LedgerEntry;
  /** Whether it was not here before. */
  readonly fresh: boolean;
}
