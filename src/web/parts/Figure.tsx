import './Figure.css';
import type { ReactNode } from 'react';

/** A large figure with its unit or ± beside it and the word for it below. */
export function Figure({ value, beside, children }: { value: string; beside?: string; children: ReactNode }) {
  return (
    <p className="figure">
      <span className="big figure-value">
        {value}
        {beside && <span className="figure-beside"> {beside}</span>}
      </span>
      <span className="figure-word">{children}</span>
    </p>
  );
}
