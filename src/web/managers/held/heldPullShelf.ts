import { earlierTyped } from '../proofs/earlierTyped.ts';
import { openHeld, patient } from './heldDatabase.ts';
import type { HeldPull } from './heldPull.ts';

/** Where unsent pulls lie, in order. Each promise rejects where the browser's storage is full or forbidden. */
export interface HeldPullShelf {
  read(): Promise<readonly HeldPull[]>;
  /** Resolves once the pull is on the disk; one that lies there already is there once, as it is given now. */
  put(pull: HeldPull): Promise<void>;
  /** Lets go of a pull and of photographs that were held for it, all or none. */
  drop(id: string, photographs: readonly string[]): Promise<void>;
}

/** The one shelf of this browser. */
export const heldPullShelf: HeldPullShelf = {
  async read() {
    const lying = await patient((await openHeld()).getAll('pulls'));
    return lying.map((pull) => ({ ...pull, typed: earlierTyped(pull.typed) }));
  },
  async put(pull) {
    const database = await openHeld();
    const transaction = database.transaction('pulls', 'readwrite', { durability: 'strict' });
    const { id } = pull.typed;
    const put = async () => {
      const known = await transaction.store.index('once').getKey(id);
      await transaction.store.put({ ...pull, id }, known);
      await transaction.done;
    };
    await patient(put());
  },
  async drop(id, photographs) {
    const database = await openHeld();
    const transaction = database.transaction(['pulls', 'photographs'], 'readwrite');
    const pulls = transaction.objectStore('pulls');
    const pictures = transaction.objectStore('photographs');
    const pull = await pulls.index('once').getKey(id);
    if (pull !== undefined) await pulls.delete(pull);
    for (const photograph of photographs) {
      const key = await pictures.index('once').getKey(photograph);
      if (key !== undefined) await pictures.delete(key);
    }
    await transaction.done;
  },
};
