import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { sendHeld } from './sendHeld.ts';

/** How often what is not sent yet is tried again, ms. */
const againMs = 4000;

/** Sends, from whatever screen is open, the photographs and pulls that this browser holds; shows nothing. */
export function KeepSending() {
  const queries = useQueryClient();
  useEffect(() => {
    const send = () => void sendHeld(queries);
    send();
    const again = setInterval(send, againMs);
    addEventListener('online', send);
    return () => {
      clearInterval(again);
      removeEventListener('online', send);
    };
  }, [queries]);
  return null;
}
