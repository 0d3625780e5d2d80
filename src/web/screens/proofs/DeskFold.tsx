import type { ReactNode } from 'react';

/** Words that give way where the desk has to stand in one view. */
export function DeskFold({
  title,
  open = false,
  children,
}: {
  title: string;
  open?: boolean;
  children: ReactNode;
}) {
  return (
    <details className="desk-fold" open={open}>
      <summary>{title}</summary>
      <div>{children}</div>
    </details>
  );
}
