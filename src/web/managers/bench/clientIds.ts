import type { DraftShelf } from '../draftKeeper.ts';

const deviceKey = 'stonetone-device';

/** An id that no other device chooses: 24 hexadecimal digits. Works without a secure address too. */
export function newClientId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** What this browser is called in a log, so that its clock is known again; the same after a reload where it can be. */
export function deviceName(shelf: DraftShelf): string {
  try {
    const kept = shelf.getItem(deviceKey);
    if (kept !== null) return kept;
    const fresh = `device ${newClientId().slice(0, 8)}`;
    shelf.setItem(deviceKey, fresh);
    return fresh;
  } catch {
    return `device ${newClientId().slice(0, 8)}`;
  }
}

/** Calls this browser from now on as the server does, which logs no device under another's name. */
export function keepDeviceName(shelf: DraftShelf, name: string): void {
  try {
    if (shelf.getItem(deviceKey) !== name) shelf.setItem(deviceKey, name);
  } catch {
    // The server puts the name in all the same.
  }
}
