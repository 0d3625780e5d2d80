import { useCallback, useEffect, useRef, useState } from 'react';

/** Keys that take the photograph: space, and what remotes and volume buttons send where a browser passes it on. */
const shutterKeys: ReadonlySet<string> = new Set([
  ' ',
  'AudioVolumeUp',
  'AudioVolumeDown',
  'VolumeUp',
  'VolumeDown',
]);

const timerSeconds = 2;

/** The shutter: pressed by button or key, at once or after the self-timer. */
export function useShutter(
  ready: boolean,
  onTake: () => void,
): {
  readonly timer: boolean;
  readonly setTimer: (on: boolean) => void;
  /** Seconds until it is taken; null while nothing counts down. */
  readonly countdown: number | null;
  readonly press: () => void;
} {
  const [timer, setTimer] = useState(false);
  const [countdown, setCountdown] = useState<number | null>(null);
  const take = useRef(onTake);
  take.current = onTake;
  const press = useCallback(() => {
    if (!ready) return;
    // A second press while it counts calls it off.
    if (countdown !== null) setCountdown(null);
    else if (timer) setCountdown(timerSeconds);
    else take.current();
  }, [ready, timer, countdown]);
  useEffect(() => {
    if (countdown === null) return;
    const clock = setTimeout(() => {
      if (countdown > 1) return setCountdown(countdown - 1);
      setCountdown(null);
      take.current();
    }, 1_000);
    return () => clearTimeout(clock);
  }, [countdown]);
  useEffect(() => {
    const key = (event: KeyboardEvent) => {
      if (!shutterKeys.has(event.key) || event.repeat) return;
      // Space on a button or a choice does what it does everywhere.
      const on =
        event.target instanceof Element ? event.target.closest('button, input, summary, a, label') : null;
      if (event.key === ' ' && on) return;
      event.preventDefault();
      press();
    };
    document.addEventListener('keydown', key);
    return () => document.removeEventListener('keydown', key);
  }, [press]);
  return { timer, setTimer, countdown, press };
}
