import type { Hold } from './patchReading.ts';
import type { HoldShare, HoldVerdict } from './testStoneAnswer.ts';

/** What became of one place on one stone, wherever that was seen. */
export interface HoldObservation {
  /** Unlike any other stone's; places on one stone are no replicates of each other. */
  readonly stone: string;
  readonly from: 'test-stone' | 'work';
  /** Strip, or the place itself. */
  readonly strip: string;
  readonly medium: string;
  readonly etch: string;
  readonly hold: Hold;
}

/** What this room found of one medium under one etch. */
export interface KnownHold {
  readonly etch: string;
  readonly share: HoldShare;
  readonly verdict: HoldVerdict;
  /** How sure that is, which the grid hatches by: `sure` where a claim stands, `some` from three stones on, else `little`. */
  readonly certainty: 'sure' | 'some' | 'little';
  readonly counts: Readonly<Record<Hold, number>>;
  readonly testStones: number;
  readonly works: number;
  /** Pulled towards what the medium does under all etches, as `pooledBy` says, with its 95 % interval: an aid, not a finding. */
  readonly pooled: number;
  readonly pooledLow: number;
  readonly pooledHigh: number;
}

/** What the etch table asks for, and what sources say of it. */
export interface TableAdvice {
  readonly table: string;
  readonly row: string;
  readonly basis: string;
  /** Empty where sources agree or none was kept. */
  readonly sources: readonly { readonly source: string; readonly advice: string }[];
  /** Why the row says what it does where they disagree; null: not stated. */
  readonly choice: string | null;
}

export interface KnownMedium {
  readonly medium: string;
  readonly holds: readonly KnownHold[];
  /** null where the table has no rule for it. */
  readonly advice: TableAdvice | null;
  /** What the table and its sources say, judged by what this room found, in a sentence. */
  readonly found: string;
}

/** What this room knows of media and etches. */
export interface KnownHolds {
  readonly schema: 'stonetone/known-holds/1';
  /** Columns of the grid. */
  readonly etches: readonly string[];
  readonly media: readonly KnownMedium[];
  readonly stones: number;
  readonly alike: { readonly value: number; readonly origin: 'estimated' | 'assumed' };
  readonly pooledBy: string;
}
