import type { PullEntry } from './pullTones.ts';

/** The photographs of an edition's impressions, and what was read from them, beside the approved pull's. */
export interface EditionReadings {
  /** The pull that was approved; null: none is named. */
  readonly approval: PullEntry | null;
  /** Impressions with a photograph that counts, in the order in which they were pulled. */
  readonly impressions: readonly {
    /** Client id of its entry in the ledger. */
    readonly impression: string;
    /** Its number at the press. */
    readonly n: number;
    /** Read as a pull is; photographs that were taken back left out. */
    readonly pull: PullEntry;
  }[];
}
