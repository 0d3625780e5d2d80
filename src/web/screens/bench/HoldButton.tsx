import { type ReactNode, useEffect, useRef, useState } from 'react';
import { holdMs } from './useBenchKeys.ts';

/** A target that counts only once it was held, by finger, mouse or key. */
export function HoldButton({ onHeld, children }: { onHeld: () => void; children: ReactNode }) {
  const [held, setHeld] = useState(false);
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  const begin = () => {
    if (held) return;
    setHeld(true);
    waiting.current = setTimeout(() => {
      setHeld(false);
      onHeld();
    }, holdMs);
  };
  const end = () => {
    clearTimeout(waiting.current);
    setHeld(false);
  };
  useEffect(() => () => clearTimeout(waiting.current), []);
  return (
    <button
      type="button"
      className={held ? 'bench-target held' : 'bench-target'}
      onPointerDown={(event) => {
        event.preventDefault();
        begin();
      }}
      onPointerUp={end}
      onPointerLeave={end}
      onPointerCancel={end}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if ((event.key === ' ' || event.key === 'Enter') && !event.repeat) begin();
      }}
      onKeyUp={end}
      onBlur={end}
    >
      {children}
    </button>
  );
}
