import { type Failure, failure } from '../foundation/failure.ts';
import { fail, type Result } from '../foundation/result.ts';
import type { SaveRefusal } from '../records/saving.ts';
import type { Decide } from '../store/keptRecords.ts';

/** What every use case that keeps a record is given. */
export interface SavingParts {
  readonly store: { readonly decide: Decide };
  readonly now: () => Date;
  readonly newId: () => string;
  /** True while the invented studio's own records are placed. */
  readonly sample?: boolean;
}

/** What a save ends with: the record whole, or why it was refused. */
export type Saved<Entry> = Result<Entry, SaveRefusal<Entry>>;

/** What a person changed, and the version that they started from. */
export type Changes<Draft> = Partial<Draft> & { readonly version: number };

/** A save refused for what was typed: nothing is kept, nobody else's save is in the way. */
export function refused(why: Failure): Result<never, SaveRefusal<never>> {
  return fail({ failure: why, current: null });
}

/**
 * A save refused because somebody saved in between; carries the record as it is kept now.
 * @param what the thing in words, such as `the stone S-01`
 * @param versions the one that the save started from, and the one that is kept
 */
export function stale<Entry>(
  what: string,
  versions: { readonly yours: number; readonly kept: number },
  current: Entry,
): Result<never, SaveRefusal<Entry>> {
  const details = { what, ...versions };
  return fail({ failure: failure('stale-save', details, 'version'), current });
}

/** A record with what was changed; fields that are left out stay as they are. */
export function withChanges<Kept extends object>(kept: Kept, changes: Partial<Kept>): Kept {
  const given = Object.entries(changes).filter(([, value]) => value !== undefined);
  return { ...kept, ...(Object.fromEntries(given) as Partial<Kept>) };
}
