import type { core, ZodError } from 'zod';
import { issueWords } from './issueWords.ts';

/** The path to the first offending field, such as `[3].polygonMm[0]`; empty for the whole. */
export function fieldPath(error: ZodError): string {
  return (innermost(error)?.path ?? []).reduce<string>(
    (path, key) =>
      typeof key === 'number' ? `${path}[${key}]` : path ? `${path}.${String(key)}` : String(key),
    '',
  );
}

/** What is wrong with the first offending field, and where, in words for a sentence. */
export function issueReason(error: ZodError): string {
  const path = fieldPath(error);
  const issue = innermost(error);
  const words = issue ? issueWords(issue) : 'it has another form';
  return path ? `${words} at ${path}` : words;
}

/** The first issue; where a value may have several forms, the issue inside the form that it has by its outer shape. */
function innermost(error: ZodError): core.$ZodIssue | undefined {
  let issue: core.$ZodIssue | undefined = error.issues[0];
  while (issue?.code === 'invalid_union') {
    const outer: PropertyKey[] = issue.path;
    const inner: core.$ZodIssue | undefined = issue.errors.find(
      ([first]) => first && first.path.length > 0,
    )?.[0];
    if (!inner) return issue;
    issue = { ...inner, path: [...outer, ...inner.path] };
  }
  return issue;
}
