import type { Failure } from '../foundation/failure.ts';

/** How the daily copies stand. */
export interface CopiesState {
  /** Where they go; null: none are made. */
  readonly folder: string | null;
  /** The newest that was verified whole; null where there is none. */
  readonly lastGood: { readonly file: string; readonly madeAt: string } | null;
  /** Why today's could not be made, or was not whole; null while all is well. */
  readonly failed: { readonly at: string; readonly failure: Failure } | null;
}
