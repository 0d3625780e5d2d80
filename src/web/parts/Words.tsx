import './Field.css';
import { type TextareaHTMLAttributes, useId } from 'react';

/** Several lines to write on, with their words above and a hint below. */
export function Words({
  label,
  hint,
  ...rest
}: { label: string; hint?: string } & TextareaHTMLAttributes<HTMLTextAreaElement>) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <textarea id={id} rows={3} aria-describedby={hint && `${id}-hint`} {...rest} />
      {hint && (
        <p id={`${id}-hint`} className="soft field-hint">
          {hint}
        </p>
      )}
    </div>
  );
}
