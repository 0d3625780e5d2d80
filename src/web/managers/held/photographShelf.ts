import { openHeld, patient } from './heldDatabase.ts';
import type { HeldPhotograph } from './heldPhotograph.ts';

/** Where unsent photographs lie, in order. Each promise rejects where the browser's storage is full or forbidden. */
export interface PhotographShelf {
  read(): Promise<readonly HeldPhotograph[]>;
  /** Resolves once the photograph is on the disk; one that lies there already is there once, as it is given now. */
  put(photograph: HeldPhotograph): Promise<void>;
  drop(id: string): Promise<void>;
}

/** The one shelf of this browser. */
export const photographShelf: PhotographShelf = {
  async read() {
    return patient((await openHeld()).getAll('photographs'));
  },
  async put(photograph) {
    const database = await openHeld();
    const transaction = database.transaction('photographs', 'readwrite', { durability: 'strict' });
    const known = await transaction.store.index('once').getKey(photograph.id);
    await transaction.store.put(photograph, known);
    await transaction.done;
  },
  async drop(id) {
    const database = await openHeld();
    const transaction = database.transaction('photographs', 'readwrite');
    const key = await transaction.store.index('once').getKey(id);
    if (key !== undefined) await transaction.store.delete(key);
    await transaction.done;
  },
};
