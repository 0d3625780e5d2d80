import './Field.css';
import { useId } from 'react';

/** One of a list too long to show whole. */
export function Choice<Value extends string>({
  label,
  hint,
  value,
  options,
  onChoose,
}: {
  label: string;
  hint?: string;
  value: Value;
  options: readonly (readonly [value: Value, words: string])[];
  onChoose: (value: Value) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={hint && `${id}-hint`}
        onChange={(event) => onChoose(event.target.value as Value)}
      >
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
      {hint && (
        <p id={`${id}-hint`} className="soft field-hint">
          {hint}
        </p>
      )}
    </div>
  );
}
