import './Fold.css';
import type { ReactNode } from 'react';

/** Words kept folded until somebody wants them. */
export function Fold({ title, children }: { title: string; children: ReactNode }) {
  return (
    <details className="fold">
      <summary>{title}</summary>
      <div className="fold-inside">{children}</div>
    </details>
  );
}
