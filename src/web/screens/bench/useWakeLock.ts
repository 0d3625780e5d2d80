import { useEffect } from 'react';

/** Keeps the screen lit while the bench is open, where the browser can and may; a page that is hidden lets go. */
export function useWakeLock(): void {
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let held: WakeLockSentinel | null = null;
    let left = false;
    const hold = async () => {
      if (document.visibilityState === 'hidden') return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        if (left) await lock.release();
        else held = lock;
      } catch {
        // A low battery may refuse it; the clock goes by timestamps all the same.
      }
    };
    const again = () => void hold();
    again();
    document.addEventListener('visibilitychange', again);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', again);
      void held?.release().catch(() => {});
    };
  }, []);
}
