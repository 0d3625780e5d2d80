import { useEffect, useRef } from 'react';

/**
 * Lays what is unsaved on a shelf: as soon as it stands still (`quiet`, or what it is compared with, is another), and
 * once more on leaving, so that whoever leaves while the hand still moves takes the last stroke along.
 */
export function useKeptOnLeaving(lay: () => void, quiet: unknown, against: unknown): void {
  const latest = useRef(lay);
  latest.current = lay;
  // biome-ignore lint/correctness/useExhaustiveDependencies: these two say when
  useEffect(() => latest.current(), [quiet, against]);
  useEffect(() => {
    const leave = () => latest.current();
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
}
