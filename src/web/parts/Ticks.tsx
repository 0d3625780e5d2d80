import './Picks.css';

/** Any of a few, all in sight. */
export function Ticks<Value extends string>({
  label,
  values,
  options,
  onTick,
}: {
  label: string;
  values: readonly Value[];
  options: readonly (readonly [value: Value, words: string])[];
  onTick: (values: readonly Value[]) => void;
}) {
  return (
    <fieldset className="picks">
      <legend>{label}</legend>
      <div>
        {options.map(([each, words]) => (
          <label key={each}>
            <input
              type="checkbox"
              className="unseen"
              checked={values.includes(each)}
              onChange={() =>
                onTick(values.includes(each) ? values.filter((value) => value !== each) : [...values, each])
              }
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
