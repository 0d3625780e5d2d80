import { failure } from '../foundation/failure.ts';
import { fail, type Result } from '../foundation/result.ts';

/** The failure of a list whose `after` is no mark that a list ever gave. */
export function badMark(): Result<never> {
  return fail(failure('body-malformed', { why: 'after marks no place in this list' }, 'after'));
}
