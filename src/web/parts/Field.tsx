import './Field.css';
import { type InputHTMLAttributes, useId } from 'react';
import { readBackOf } from '../words/moments.ts';
import { useInches } from './useInches.ts';

/**
 * A line to write on, with its words above, a hint below, and what is wrong with it where something is. A line for a day
 * reads back in words what it holds: browsers write days by their own settings, not by this page’s.
 */
export function Field({
  label,
  hint,
  unit,
  trouble,
  value,
  onChange,
  ...rest
}: {
  label: string;
  hint?: string;
  unit?: string;
  trouble?: string | null;
} & InputHTMLAttributes<HTMLInputElement>) {
  const line = useInches({ ...(unit !== undefined && { unit }), value, onChange });
  const id = useId();
  const readBack =
    rest.type === 'date' || rest.type === 'datetime-local' ? readBackOf(String(value ?? '')) : '';
  const described =
    [readBack && `${id}-held`, hint && `${id}-hint`, trouble && `${id}-trouble`].filter(Boolean).join(' ') ||
    undefined;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-line">
        <input
          id={id}
          aria-describedby={described}
          aria-invalid={trouble ? true : undefined}
          {...rest}
          {...(line.value !== undefined && { value: line.value })}
          {...(line.onChange && { onChange: line.onChange })}
        />
        {line.unit && <span className="soft">{line.unit}</span>}
      </span>
      {readBack && (
        <p id={`${id}-held`} className="field-held">
          {readBack}
        </p>
      )}
      {hint && (
        <p id={`${id}-hint`} className="soft field-hint">
          {hint}
        </p>
      )}
      {trouble && (
        <p id={`${id}-trouble`} className="field-trouble">
          {trouble}
        </p>
      )}
    </div>
  );
}
