import './StoneSlab.css';
import type { ReactNode } from 'react';

/** A stone that stands on the rack: its face (a picture, or bare), seen a little from the right and above. */
export function StoneSlab({ children }: { children: ReactNode }) {
  return (
    <span className="slab">
      <span className="slab-top" />
      <span className="slab-side" />
      <span className="slab-face">{children}</span>
    </span>
  );
}
