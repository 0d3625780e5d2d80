import { openHeld, patient } from './heldDatabase.ts';
import type { HeldTap, LogKind } from './heldTap.ts';

/** Where one log's unsent taps lie, in order. Each promise rejects where the browser's storage is full or forbidden. */
export interface TapShelf<Unsent> {
  read(): Promise<readonly Unsent[]>;
  /** Resolves once the tap is on the disk; one that lies there already is there once. */
  add(event: Unsent): Promise<void>;
  drop(clientId: string): Promise<void>;
}

/** The shelf of a run or of an edition's ledger in this browser. */
export function tapShelfOf<Unsent extends { readonly clientId: string }>(
  of: LogKind,
  log: string,
): TapShelf<Unsent> {
  return {
    async read() {
      const taps = await patient((await openHeld()).getAllFromIndex('taps', 'log', log));
      return taps.map(({ event }) => event as Unsent);
    },
    async add(event) {
      const { clientId } = event;
      const database = await openHeld();
      const transaction = database.transaction('taps', 'readwrite', { durability: 'strict' });
      const put = async () => {
        const known = await transaction.store.index('once').getKey([log, clientId]);
        if (known === undefined) await transaction.store.add({ log, of, clientId, event });
        await transaction.done;
      };
      await patient(put());
    },
    async drop(clientId) {
      const database = await openHeld();
      const transaction = database.transaction('taps', 'readwrite');
      const key = await transaction.store.index('once').getKey([log, clientId]);
      if (key !== undefined) await transaction.store.delete(key);
      await transaction.done;
    },
  };
}

/** The logs of which this browser holds something unsent: of pages too that were closed before it was sent. */
export async function unsentLogs(): Promise<readonly Pick<HeldTap, 'log' | 'of'>[]> {
  const taps = await patient((await openHeld()).getAll('taps'));
  return [...new Map(taps.map(({ log, of }) => [log, { log, of }])).values()];
}
