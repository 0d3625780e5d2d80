import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { Touches } from './Touches.tsx';

/** Something told in words: what was told before is picked, something new is typed once. */
export function TextPick({
  label,
  value,
  before,
  onValue,
}: {
  label: string;
  value: string | null;
  before: readonly string[];
  onValue: (value: string | null) => void;
}) {
  return (
    <>
      {before.length > 0 && (
        <Touches
          label={label}
          value={value ?? ''}
          options={[...before.map((each) => [each, each] as const), ['', say('not noted')]]}
          onPick={(picked) => onValue(picked === '' ? null : picked)}
        />
      )}
      <Field
        label={before.length > 0 ? say('Something else') : label}
        autoComplete="off"
        maxLength={100}
        value={value !== null && !before.includes(value) ? value : ''}
        onChange={(event) => onValue(event.target.value.trim() === '' ? null : event.target.value)}
      />
    </>
  );
}
