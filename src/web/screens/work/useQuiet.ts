import { useEffect, useState } from 'react';

/** A value as it was when it last stood still: what follows from a drawing is worked out once the hand rests. */
export function useQuiet<T>(value: T, forMs = 150): T {
  const [quiet, setQuiet] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setQuiet(value), forMs);
    return () => clearTimeout(timer);
  }, [value, forMs]);
  return quiet;
}
