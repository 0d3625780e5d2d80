import type { HeldTap } from './heldTap.ts';

/** What the keys of the browser's local storage began with that held what was unsent of a run or a ledger. */
const prefix = 'stonetone-unsent-';

/** What is logged at the press and never at the bench: told apart by it where nothing else says so. */
const ledgerKinds = new Set([
  'impression',
  'reading',
  'photographed',
  'checked',
  'charged',
  'resumed',
  'paused',
]);

/** What earlier screens left unsent in the browser's local storage, key by key; what cannot be read is left alone. */
export function legacyTaps(
  shelf: Pick<Storage, 'length' | 'key' | 'getItem'>,
): readonly { readonly key: string; readonly taps: readonly HeldTap[] }[] {
  try {
    const keys = Array.from({ length: shelf.length }, (_, index) => shelf.key(index) ?? '');
    return keys
      .filter((key) => key.startsWith(prefix))
      .flatMap((key) => {
        const events = read(shelf.getItem(key));
        if (events === null) return [];
        const of = events.some(({ kind }) => ledgerKinds.has(kind)) ? 'ledger' : 'run';
        const log = key.slice(prefix.length);
        return [
          { key, taps: events.map((event) => ({ log, of, clientId: event.clientId, event }) as const) },
        ];
      });
  } catch {
    return [];
  }
}

interface LegacyEvent {
  readonly clientId: string;
  readonly kind: string;
}

function read(text: string | null): readonly LegacyEvent[] | null {
  try {
    const kept: unknown = JSON.parse(text ?? '');
    if (!Array.isArray(kept)) return null;
    return kept.filter((event: Partial<LegacyEvent> | null) => typeof event?.clientId === 'string');
  } catch {
    return null;
  }
}
