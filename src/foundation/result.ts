import type { Failure } from './failure.ts';

/** An expected outcome: the value, or the modelled failure that prevented it. Never thrown. */
export type Result<T, E = Failure> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

/** Wraps a value as a success. */
export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value };
}

/** Wraps a failure. */
export function fail<E>(error: E): Result<never, E> {
  return { ok: false, error };
}
