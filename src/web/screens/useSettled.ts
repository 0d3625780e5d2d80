import { useEffect, useState } from 'react';

/** Whether a value has stayed the same for a while; true from the start, false while it changes. */
export function useSettled(value: string, forMs = 400): boolean {
  const [settledOn, setSettledOn] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettledOn(value), forMs);
    return () => clearTimeout(timer);
  }, [value, forMs]);
  return settledOn === value;
}
