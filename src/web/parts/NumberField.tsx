import { useState } from 'react';
import { numberText, numberTrouble, typedNumber } from '../managers/typedNumber.ts';
import { Field } from './Field.tsx';

/**
 * A number that takes effect as soon as it is one within its bounds; what is typed stays as typed until the value
 * comes to be another from elsewhere. An empty line means null, where that is allowed.
 */
export function NumberField({
  label,
  unit,
  hint,
  value,
  least,
  most,
  needed = true,
  placeholder,
  onValue,
}: {
  label: string;
  unit?: string;
  hint?: string;
  value: number | null;
  least: number;
  most: number;
  needed?: boolean;
  placeholder?: string;
  onValue: (value: number | null) => void;
}) {
  const asked = { needed, ...(unit !== undefined && { unit }) };
  const [typed, setTyped] = useState({ text: numberText(value), stoodFor: value });
  const text = typed.stoodFor === value ? typed.text : numberText(value);
  const type = (next: string) => {
    const number = typedNumber(next);
    const good = numberTrouble(next, least, most, asked) === null;
    setTyped({ text: next, stoodFor: good ? number : value });
    if (good && number !== value) onValue(number);
  };
  return (
    <Field
      label={label}
      {...(unit !== undefined && { unit })}
      {...(hint !== undefined && { hint })}
      {...(placeholder !== undefined && { placeholder })}
      inputMode="decimal"
      autoComplete="off"
      value={text}
      trouble={numberTrouble(text, least, most, asked)}
      onChange={(event) => type(event.target.value)}
    />
  );
}
