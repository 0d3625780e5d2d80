import { z } from 'zod';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Zone } from '../records/zone.ts';
import { fieldPath, issueReason } from './fieldPath.ts';
import { pointSchema } from './point.ts';

/** Lower case with hyphens, so that `Scraped white` is understood as `scraped-white`. */
const word = (value: unknown) =>
  typeof value === 'string'
    ? value
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, '-')
    : (value ?? undefined);

const outline = z
  .array(pointSchema)
  .min(3)
  .max(2000)
  .transform((points) => (isClosed(points) ? points.slice(0, -1) : points));

export const zoneSchema = z.object({
  id: z.string().min(1).max(100),
  name: z.string().min(1).max(200),
  medium: z.string().min(1).max(100),
  deposit: z.preprocess(word, z.enum(['light', 'middle', 'dark', 'solid', 'wash']).optional()).optional(),
  intention: z
    .preprocess(
      (value) => (word(value) === 'guide-line' ? 'guide' : word(value)),
      z.enum(['drawn', 'guide', 'stop-out', 'scraped-white']).optional(),
    )
    .optional(),
  polygonMm: outline,
}) satisfies z.ZodType<Zone>;

/** The content of zones.json. An empty list is legal; a repeated closing point is dropped; fields beyond these are passed over. */
export const zonesSchema = z.array(zoneSchema).max(500) satisfies z.ZodType<readonly Zone[]>;

/**
 * Reads the text of zones.json. Only its form is judged here; where zones lie, and whether they cross
 * themselves, is judged against the work rectangle when measuring.
 *
 * @returns zones-malformed with the path to the field, such as `[3].polygonMm[0]`
 */
export function readZones(text: string): Result<readonly Zone[]> {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return fail(failure('zones-malformed', { why: 'it is not JSON' }));
  }
  const parsed = zonesSchema.safeParse(json);
  if (parsed.success) return ok(parsed.data);
  const path = fieldPath(parsed.error);
  return fail(failure('zones-malformed', { why: issueReason(parsed.error) }, path));
}

function isClosed(points: readonly (readonly [number, number])[]): boolean {
  const first = points[0]!;
  const last = points.at(-1)!;
  return points.length > 3 && first[0] === last[0] && first[1] === last[1];
}
