import type { Failure } from '../foundation/failure.ts';

/** What was found when a copy was read back from end to end. */
export interface CopyCheck {
  readonly at: string;
  /** Null: every byte is as it was saved. */
  readonly failure: Failure | null;
  /** When it was made, by its own list; null where it could not be read. */
  readonly madeAt: string | null;
  readonly photographs: number | null;
  /** What was amiss in the data folder itself when it was saved, in sentences. */
  readonly concerns: readonly string[];
}

/** One day's copy. */
export interface DailyCopy {
  /** ISO day, by the machine's own calendar. */
  readonly day: string;
  readonly file: string;
  readonly bytes: number;
  /** Null: not read back since Stonetone was started. */
  readonly check: CopyCheck | null;
}

/** What is being done with copies at this moment. */
export interface CopyBusy {
  readonly act: 'copying' | 'checking';
  readonly day: string;
  readonly since: string;
  /** Written so far; null while nothing is written. */
  readonly bytes: number | null;
}

/** How the daily copies stand. */
export interface CopiesState {
  /** Where they go; null: none are made. */
  readonly folder: string | null;
  /** The newest that was verified whole; null where there is none. */
  readonly lastGood: { readonly file: string; readonly madeAt: string } | null;
  /** Why today's could not be made, or was not whole; null while all is well. */
  readonly notMade: { readonly at: string; readonly failure: Failure } | null;
  readonly busy: CopyBusy | null;
  /** Those in the folder, newest first. */
  readonly copies: readonly DailyCopy[];
  /** How many are kept: of days, and the newest of each week and month. */
  readonly keeps: { readonly days: number; readonly weeks: number; readonly months: number };
  /** What the folder's disk has left; null where nobody can tell. */
  readonly freeBytes: number | null;
  /** Whether they lie on the disk that holds the data: what takes one takes both. Null where nobody can tell. */
  readonly sameDisk: boolean | null;
}
