import type { PullTyped } from '../proofs/pullDraft.ts';

/** A pull that was entered here to its end and that the server may not have yet. Its id is the typed one. */
export interface HeldPull {
  readonly workId: string;
  /** As the work was called then: it is told by that where the work cannot be opened. */
  readonly workTitle: string;
  /** Its photographs carry the name of one held here (`heldName`) until they are sent. */
  readonly typed: PullTyped;
  /** ISO 8601 with zone, by this device's clock. */
  readonly enteredAt: string;
}

/** As it lies in the browser. */
export interface LyingPull extends HeldPull {
  readonly id: string;
}
