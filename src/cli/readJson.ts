import type { ZodType } from 'zod';
import { fieldPath, issueReason } from '../contract/fieldPath.ts';
import { failure } from '../foundation/failure.ts';
import type { FailureCode } from '../foundation/failureRegistry.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { readText } from './readInput.ts';

/**
 * Reads a JSON file of a known form.
 * @param code what is told, with `{why}`, where the file is not JSON or has another form; a missing file has its own code.
 */
export async function readJson<T>(file: string, schema: ZodType<T>, code: FailureCode): Promise<Result<T>> {
  const text = await readText(file);
  if (!text.ok) return text;
  let json: unknown;
  try {
    json = JSON.parse(text.value.replace(/^\uFEFF/, ''));
  } catch {
    return fail(failure(code, { why: `${file} is not JSON` }));
  }
  const read = schema.safeParse(json);
  if (read.success) return ok(read.data);
  return fail(failure(code, { why: issueReason(read.error) }, fieldPath(read.error)));
}
