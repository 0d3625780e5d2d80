import { type FailureCode, failureRegistry } from './failureRegistry.ts';

/** What went wrong, where, and what to do: safe to show to a person as it stands. */
export interface Failure {
  readonly code: FailureCode;
  /** One sentence: what was wrong, and where. */
  readonly message: string;
  /** One sentence: what the person can do. */
  readonly remedy: string;
  /** Path of the offending field, such as `zones[3].polygonMm`, where there is one. */
  readonly path?: string;
}

/**
 * Builds a failure from the registry, filling `{name}` placeholders of its sentence and remedy.
 * A placeholder without a detail is left as it stands, so a missing one shows up in tests.
 */
export function failure(
  code: FailureCode,
  details: Readonly<Record<string, string | number>> = {},
  path?: string,
): Failure {
  const entry = failureRegistry[code];
  const fill = (text: string) => text.replace(/\{(\w+)\}/g, (whole, name) => String(details[name] ?? whole));
  return { code, message: fill(entry.sentence), remedy: fill(entry.remedy), ...(path ? { path } : {}) };
}
