import './Picks.css';
import { useId } from 'react';

/** One of a few, all in sight: arrow keys go from one to the next. */
export function Picks<Value extends string>({
  label,
  shownLabel = true,
  value,
  options,
  onPick,
}: {
  label: string;
  /** Whether the words above are seen, or only read out. */
  shownLabel?: boolean;
  value: Value;
  options: readonly (readonly [value: Value, words: string])[];
  onPick: (value: Value) => void;
}) {
  const id = useId();
  return (
    <fieldset className="picks">
      <legend className={shownLabel ? undefined : 'unseen'}>{label}</legend>
      <div>
        {options.map(([each, words]) => (
          <label key={each}>
            <input
              type="radio"
              className="unseen"
              name={id}
              value={each}
              checked={each === value}
              onChange={() => onPick(each)}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
