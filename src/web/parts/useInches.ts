import { type ChangeEvent, type InputHTMLAttributes, useState } from 'react';
import { typedNumber } from '../managers/typedNumber.ts';
import { fromInchText, inchText, inchUnitOf } from '../words/lengths.ts';

type Line = Pick<InputHTMLAttributes<HTMLInputElement>, 'value' | 'onChange'> & { readonly unit?: string };

/**
 * A line typed in inches over a form that keeps millimetres: the form is told millimetres, and what is typed stays as
 * typed until the form holds another value. Lines of any other unit, and all where millimetres are chosen, go through.
 */
export function useInches({ unit, value, onChange }: Line): Line {
  const inch = inchUnitOf(unit);
  const [typed, setTyped] = useState<{ readonly text: string; readonly stoodFor: unknown } | null>(null);
  if (!inch || typeof value !== 'string') return { ...(unit !== undefined && { unit }), value, onChange };
  const kept = typedNumber(value);
  const shown = kept === null || Number.isNaN(kept) ? value : inchText(kept, inch.per);
  return {
    unit: inch.unit,
    value: typed?.stoodFor === value ? typed.text : shown,
    onChange: (event: ChangeEvent<HTMLInputElement>) => {
      const text = event.target.value;
      const number = fromInchText(text, inch.per);
      const told = Number.isNaN(number) ? text : String(number);
      setTyped({ text, stoodFor: told });
      onChange?.({ ...event, target: { ...event.target, value: told } });
    },
  };
}
