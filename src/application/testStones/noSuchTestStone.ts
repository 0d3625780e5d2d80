import { type Failure, failure } from '../../foundation/failure.ts';

/** The failure for a test stone that is not there. */
export function noSuchTestStone(): Failure {
  return failure('not-found', { what: 'such test stone' });
}
