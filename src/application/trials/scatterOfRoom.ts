import { ok, type Result } from '../../foundation/result.ts';
import type { RoomScatter } from '../../records/trialDesign.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { openStoreToRead } from '../../store/openStore.ts';
import { roomScatter } from '../../studio/trials/design/roomScatter.ts';
import { readyToRead } from '../export/readyToRead.ts';
import { roomFindings } from './roomFindings.ts';

/**
 * How much stones, strips and patches of the room of a data folder scatter, by its kept readings; it may be served meanwhile.
 * @returns `data-folder-missing`, or what opening it fails with
 */
export async function scatterOfRoom(dataFolder: string): Promise<Result<RoomScatter>> {
  const folder = dataFolderAt(dataFolder);
  const ready = await readyToRead(folder);
  if (!ready.ok) return ready;
  const store = openStoreToRead(folder);
  if (!store.ok) return store;
  try {
    return ok(roomScatter(await roomFindings({ store: store.value })));
  } finally {
    await store.value.close();
  }
}
