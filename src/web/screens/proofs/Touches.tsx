import { useId } from 'react';

/** One of a few, each large enough for a knuckle. */
export function Touches<Value extends string>({
  label,
  value,
  options,
  onPick,
}: {
  label: string;
  value: Value;
  options: readonly (readonly [value: Value, words: string])[];
  onPick: (value: Value) => void;
}) {
  const id = useId();
  return (
    <fieldset className="touches">
      <legend>{label}</legend>
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
