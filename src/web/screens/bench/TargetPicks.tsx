import { useId } from 'react';

/** One of a few, each a target for a knuckle. */
export function TargetPicks<Value extends string>({
  label,
  value,
  options,
  onPick,
}: {
  label: string;
  value: Value | null;
  options: readonly (readonly [value: Value, words: string])[];
  onPick: (value: Value) => void;
}) {
  const head = useId();
  return (
    <div className="target-picks" role="group" aria-labelledby={head}>
      <h2 id={head}>{label}</h2>
      <div>
        {options.map(([each, words]) => (
          <button
            key={each}
            type="button"
            className="bench-target"
            aria-pressed={each === value}
            onClick={() => onPick(each)}
          >
            {words}
          </button>
        ))}
      </div>
    </div>
  );
}
