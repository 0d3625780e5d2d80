import type { ZodError } from 'zod';

/** The path to the first offending field, such as `[3].polygonMm[0]`; empty for the whole. */
export function fieldPath(error: ZodError): string {
  const keys = error.issues[0]?.path ?? [];
  return keys.reduce<string>(
    (path, key) =>
      typeof key === 'number' ? `${path}[${key}]` : path ? `${path}.${String(key)}` : String(key),
    '',
  );
}

/** What is wrong with the first offending field, and where, in words for a sentence. */
export function issueReason(error: ZodError): string {
  const path = fieldPath(error);
  const message = (error.issues[0]?.message ?? 'it has another form').replace(/\.$/, '');
  return path ? `${message} at ${path}` : message;
}
