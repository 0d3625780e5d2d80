import { z } from 'zod';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Chip } from '../records/zone.ts';
import { fieldPath, issueReason } from './fieldPath.ts';
import { pointSchema } from './point.ts';

export const chipSchema = z.object({
  photo: z.enum(['stone', 'proof']),
  name: z.string().min(1).max(200),
  polygonPx: z.array(pointSchema).min(3).max(200),
  reflectance: z.number().positive().max(1),
}) satisfies z.ZodType<Chip>;

/** The content of chips.json. */
export const chipsSchema = z.array(chipSchema).max(200) satisfies z.ZodType<readonly Chip[]>;

/**
 * Reads the text of chips.json. Only its form is judged here; whether chips lie on the photographs is judged
 * when measuring.
 *
 * @returns chips-malformed with the path to the field, such as `[2].reflectance`
 */
export function readChips(text: string): Result<readonly Chip[]> {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return fail(failure('chips-malformed', { why: 'it is not JSON' }));
  }
  const parsed = chipsSchema.safeParse(json);
  if (parsed.success) return ok(parsed.data);
  return fail(failure('chips-malformed', { why: issueReason(parsed.error) }, fieldPath(parsed.error)));
}
