import { ok, type Result } from '../../foundation/result.ts';
import type { RoomScatter } from '../../records/trialDesign.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { openStore } from '../../store/openStore.ts';
import { roomScatter } from '../../studio/trials/design/roomScatter.ts';
import { readyToRead } from '../export/readyToRead.ts';
import { roomFindings } from './roomFindings.ts';

/**
 * How much stones, strips and patches of the room of a data folder scatter, by its kept readings.
 * @returns `data-folder-busy` while it is served, `data-folder-missing`, or what opening it fails with
 */
export async function scatterOfRoom(dataFolder: string): Promise<Result<RoomScatter>> {
  const ready = await readyToRead(dataFolderAt(dataFolder));
  if (!ready.ok) return ready;
  const store = await openStore(dataFolder);
  if (!store.ok) return store;
  try {
    return ok(roomScatter(await roomFindings({ store: store.value })));
  } finally {
    await store.value.close();
  }
}
