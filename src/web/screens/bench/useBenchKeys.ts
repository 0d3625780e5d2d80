import { useEffect, useRef } from 'react';
import { type BenchKeyAct, benchKey } from '../../managers/bench/benchKeys.ts';

/** How long undo is held before it counts, ms. */
export const holdMs = 800;

/** Keys and pedals of the bench. Undo counts once its key was held; a key that stays down logs once; `off` leaves all keys to what else is shown. */
export function useBenchKeys(act: (what: BenchKeyAct) => void, off: boolean): void {
  const acting = useRef(act);
  acting.current = act;
  useEffect(() => {
    if (off) return;
    let holding: ReturnType<typeof setTimeout> | undefined;
    const down = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const target = event.target as Element;
      // the camera's page lies over the bench and has keys of its own
      if (target.closest?.('dialog') != null) return;
      const what = benchKey(event.key, target.closest?.('button, a, input, summary') != null);
      if (what === null) return;
      // arrows would scroll, and choose among the switches
      event.preventDefault();
      if (event.repeat) return;
      if (what === 'undo') holding = setTimeout(() => acting.current('undo'), holdMs);
      else acting.current(what);
    };
    const up = () => clearTimeout(holding);
    addEventListener('keydown', down);
    addEventListener('keyup', up);
    return () => {
      up();
      removeEventListener('keydown', down);
      removeEventListener('keyup', up);
    };
  }, [off]);
}
