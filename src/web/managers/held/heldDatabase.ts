import { type DBSchema, type IDBPDatabase, type OpenDBCallbacks, openDB } from 'idb';
import type { HeldPhotograph } from './heldPhotograph.ts';
import type { LyingPull } from './heldPull.ts';
import type { HeldTap } from './heldTap.ts';
import { legacyTaps } from './legacyTaps.ts';

/** What the server last answered, for a screen that must open without it. */
export interface HeldAnswer {
  readonly value: unknown;
  /** This device's clock when it was heard, ms since 1970. */
  readonly heardAt: number;
}

interface HeldSchema extends DBSchema {
  /** In the order in which they happened; a client id stands once in a log. */
  taps: { key: number; value: HeldTap; indexes: { log: string; once: [string, string] } };
  photographs: { key: number; value: HeldPhotograph; indexes: { once: string } };
  /** In the order in which they were entered. */
  pulls: { key: number; value: LyingPull; indexes: { once: string } };
  answers: { key: string; value: HeldAnswer };
}

export type HeldDatabase = IDBPDatabase<HeldSchema>;

/** A browser that does not answer for so long counts as one that keeps nothing, ms. */
const patienceMs = 4000;

const callbacks: OpenDBCallbacks<HeldSchema> = {
  upgrade(database, from) {
    if (from < 1) {
      const taps = database.createObjectStore('taps', { autoIncrement: true });
      taps.createIndex('log', 'log');
      taps.createIndex('once', ['log', 'clientId'], { unique: true });
      const photographs = database.createObjectStore('photographs', { autoIncrement: true });
      photographs.createIndex('once', 'id', { unique: true });
      database.createObjectStore('answers');
    }
    if (from < 2) {
      const pulls = database.createObjectStore('pulls', { autoIncrement: true });
      pulls.createIndex('once', 'id', { unique: true });
    }
  },
};

let opened: Promise<HeldDatabase> | null = null;

/**
 * What this browser holds until the server has it, and what it must open without the server. Rejects where storage is
 * forbidden, full or does not answer; asked again later, it tries again.
 */
export function openHeld(): Promise<HeldDatabase> {
  opened ??= patient(open()).catch((thrown: unknown) => {
    opened = null;
    throw thrown;
  });
  return opened;
}

async function open(): Promise<HeldDatabase> {
  const database = await openDB<HeldSchema>('stonetone-held', 2, {
    ...callbacks,
    // a page of newer screens would wait for this one to be closed
    blocking: (_from, _to, event) => {
      opened = null;
      (event.target as IDBDatabase).close();
    },
    terminated: () => {
      opened = null;
    },
  });
  await takeOver(database, localStorage);
  return database;
}

/** Settles as `work` does; rejects where it does not settle in time. */
export async function patient<T>(work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('this browser’s storage does not answer')), patienceMs);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** Takes over, once, what earlier screens put into the browser's local storage; only then it goes from there. */
async function takeOver(database: HeldDatabase, shelf: Storage): Promise<void> {
  const legacy = legacyTaps(shelf);
  if (legacy.length === 0) return;
  const transaction = database.transaction('taps', 'readwrite', { durability: 'strict' });
  const once = transaction.store.index('once');
  for (const tap of legacy.flatMap(({ taps }) => taps)) {
    if ((await once.getKey([tap.log, tap.clientId])) === undefined) await transaction.store.add(tap);
  }
  await transaction.done;
  for (const { key } of legacy) shelf.removeItem(key);
}
