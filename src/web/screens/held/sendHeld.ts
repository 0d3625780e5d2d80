import type { QueryClient } from '@tanstack/react-query';
import { heldPhotographs } from './heldPhotographs.ts';
import { heldPulls } from './heldPulls.ts';

/**
 * Sends what this browser holds: photographs first, then the pulls that they belong to. Two pages of a browser would send
 * the same at once; where it can be, one does.
 */
export async function sendHeld(queries: QueryClient): Promise<void> {
  const pulls = heldPulls(queries);
  const send = async () => {
    await heldPhotographs(queries).drain();
    await pulls.drain();
  };
  if (!('locks' in navigator)) return send();
  await navigator.locks.request('stonetone-photographs', { ifAvailable: true }, (lock) =>
    lock === null ? pulls.takeUp() : send(),
  );
}
