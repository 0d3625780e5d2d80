import { type ReactNode, useId } from 'react';

/** One of a few, all in sight: arrow keys go from one to the next. How it looks is its class. */
export function OneOfFew<Value extends string>({
  className,
  legend,
  value,
  options,
  onPick,
}: {
  className: string;
  legend: ReactNode;
  value: Value;
  options: readonly (readonly [value: Value, words: string])[];
  onPick: (value: Value) => void;
}) {
  const id = useId();
  return (
    <fieldset className={className}>
      {legend}
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
