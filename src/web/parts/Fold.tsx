import './Fold.css';
import type { ReactNode } from 'react';

/**
 * Words kept folded until somebody wants them.
 * @param holds what lies inside, in a few words beside the title
 * @param open whether it stands open at first
 */
export function Fold({
  title,
  holds,
  open = false,
  children,
}: {
  title: ReactNode;
  holds?: string;
  open?: boolean;
  children: ReactNode;
}) {
  return (
    <details className="fold" open={open}>
      <summary>
        {title}
        {holds !== undefined && <span className="fold-holds">{holds}</span>}
      </summary>
      <div className="fold-inside">{children}</div>
    </details>
  );
}
