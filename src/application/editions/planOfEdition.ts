import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EditionPlan, RoomPast } from '../../records/editionPlan.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { planEdition } from '../../studio/editions/editionPlan.ts';
import { roomPast } from '../../studio/editions/roomPast.ts';
import { noSuchEdition } from './findEditions.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'editions' | 'ledgers'>;
}

/** What an edition needs, by what this room's ledgers say now; or `not-found`. */
export async function planOfEdition({ store }: Parts, id: string): Promise<Result<EditionPlan>> {
  const edition = await store.editions.find(id);
  if (edition === null) return fail(noSuchEdition());
  return ok(planEdition({ ...edition, past: await readRoomPast({ store }) }));
}

/** What this room's ledgers say of spoilage and pace. */
async function readRoomPast({ store }: Parts): Promise<RoomPast> {
  const ledgers = [];
  for (const id of await store.editions.ids()) ledgers.push(await store.ledgers.entries(id));
  return roomPast(ledgers);
}
