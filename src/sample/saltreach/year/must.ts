import type { Failure } from '../../../foundation/failure.ts';
import type { Result } from '../../../foundation/result.ts';

/** What a use case gave; throws with its words where it refused, since the invented year is known to be keepable. */
export function must<T>(result: Result<T, Failure | { readonly failure: Failure }>): T {
  if (result.ok) return result.value;
  const { message, path } = 'failure' in result.error ? result.error.failure : result.error;
  throw new Error(path ? `${path}: ${message}` : message);
}
