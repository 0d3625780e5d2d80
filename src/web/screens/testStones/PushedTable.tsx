import type { ReactNode } from 'react';

/** A table that is pushed sideways where it is wider than the window. */
export function PushedTable({ label, children }: { label: string; children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the window is moved by keys
    <div className="test-stone-table" role="group" aria-label={label} tabIndex={0}>
      <table>{children}</table>
    </div>
  );
}
