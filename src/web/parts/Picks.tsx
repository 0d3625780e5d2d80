import './Picks.css';
import { OneOfFew } from './OneOfFew.tsx';

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
  return (
    <OneOfFew
      className="picks"
      legend={<legend className={shownLabel ? undefined : 'unseen'}>{label}</legend>}
      value={value}
      options={options}
      onPick={onPick}
    />
  );
}
