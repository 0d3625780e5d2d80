import { OneOfFew } from '../../parts/OneOfFew.tsx';

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
  return (
    <OneOfFew
      className="touches"
      legend={<legend>{label}</legend>}
      value={value}
      options={options}
      onPick={onPick}
    />
  );
}
