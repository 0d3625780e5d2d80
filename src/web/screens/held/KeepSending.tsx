import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { heldPhotographs } from './heldPhotographs.ts';

/** How often photographs that are not sent yet are tried again, ms. */
const againMs = 4000;

/** Sends, from whatever screen is open, the photographs that this browser holds; shows nothing. */
export function KeepSending() {
  const queries = useQueryClient();
  useEffect(() => {
    const outbox = heldPhotographs(queries);
    const drain = () => void alone(() => outbox.drain());
    drain();
    const again = setInterval(drain, againMs);
    addEventListener('online', drain);
    return () => {
      clearInterval(again);
      removeEventListener('online', drain);
    };
  }, [queries]);
  return null;
}

/** Two pages of a browser would send the same photograph at once; where it can be, one does. */
async function alone(act: () => Promise<void>): Promise<void> {
  if (!('locks' in navigator)) return act();
  await navigator.locks.request('stonetone-photographs', { ifAvailable: true }, (lock) =>
    lock === null ? undefined : act(),
  );
}
