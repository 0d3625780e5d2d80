import { useId } from 'react';
import { say } from '../../words/say.ts';

/** A small whole number set by two large buttons; null, where that is allowed, is said as not noted. */
export function Counter({
  label,
  value,
  least,
  needed = false,
  onValue,
}: {
  label: string;
  value: number | null;
  least: number;
  needed?: boolean;
  onValue: (value: number | null) => void;
}) {
  const id = useId();
  const step = (by: number) => onValue(value === null ? Math.max(least, 0) : Math.max(least, value + by));
  return (
    <div className="counter" role="group" aria-labelledby={id}>
      <p id={id}>{label}</p>
      <div>
        <button
          type="button"
          aria-label={say('{label}: one less', { label })}
          disabled={value !== null && value <= least}
          onClick={() => step(-1)}
        >
          −
        </button>
        <output className={value === null ? 'soft' : 'big'} aria-live="polite">
          {value === null ? say('not noted') : value < 0 ? `−${-value}` : value}
        </output>
        <button type="button" aria-label={say('{label}: one more', { label })} onClick={() => step(1)}>
          +
        </button>
      </div>
      {!needed && value !== null && (
        <button
          type="button"
          className="button quiet"
          aria-label={say('{label}: not noted', { label })}
          onClick={() => onValue(null)}
        >
          {say('Not noted')}
        </button>
      )}
    </div>
  );
}
