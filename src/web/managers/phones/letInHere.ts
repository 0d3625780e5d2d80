import type { Caller } from '../../../records/device.ts';
import { keepDeviceName } from '../bench/clientIds.ts';
import type { DraftShelf } from '../draftKeeper.ts';

const key = 'stonetone-let-in';

/** Whether this browser was let in when the server last said so: then its screens stand while the server is out of reach. */
export function wasLetIn(shelf: DraftShelf): boolean {
  try {
    return shelf.getItem(key) !== null;
  } catch {
    return false;
  }
}

/** Keeps what the server said, and the name that it gives this device in logs. */
export function keepCaller(shelf: DraftShelf, { kind, device }: Caller): void {
  try {
    if (kind === 'stranger') shelf.removeItem(key);
    else shelf.setItem(key, kind);
  } catch {
    // The server is asked again at the next page.
  }
  if (device !== null) keepDeviceName(shelf, device.name);
}

/** Whether an address is this machine's own, where nobody need be let in. */
export function isOwnHost(hostname: string): boolean {
  return hostname === 'localhost' || hostname === '127.0.0.1' || hostname === '[::1]';
}
