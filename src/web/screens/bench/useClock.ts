import { useEffect, useState } from 'react';

/** This device's clock, ms since 1970, looked at again and again, and when the page is seen again. */
export function useClock(everyMs: number): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const look = () => setNow(Date.now());
    const looking = setInterval(look, everyMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(looking);
      document.removeEventListener('visibilitychange', look);
    };
  }, [everyMs]);
  return now;
}
