import { z } from 'zod';

/** A moment, ISO 8601 with zone. */
export const momentSchema = z.iso.datetime({
  offset: true,
  message: 'not a moment such as 2026-03-01T09:30:00Z',
});

/** A day, ISO 8601. */
export const daySchema = z.iso.date('not a day such as 2026-03-01');

/** What a thing is called. */
export const nameSchema = z.string().trim().min(1, 'a name is needed').max(200);

/** Free words. */
export const noteSchema = z.string().max(10_000).default('');

/** Id of a kept record. */
export const idSchema = z.string().min(1).max(100);

/** The version that a save started from. */
export const versionSchema = z
  .int()
  .min(1)
  .describe('The version that this save started from; 409 where somebody saved since');

/** What a kept record carries beside what a person writes. */
export const keptFields = {
  id: z.string(),
  putBy: z.boolean(),
  version: z.int(),
  createdAt: momentSchema,
  changedAt: momentSchema,
  sample: z.boolean(),
};

/** The two fields that take a record out of its list, or bring it back. */
export const puttingBySchema = z.object({ version: versionSchema, putBy: z.boolean() });

/** What every list may be asked for. */
export const pageQuerySchema = z.object({
  search: z.string().max(200).default('').describe('Words that must all be found'),
  putBy: z
    .enum(['no', 'yes', 'all'])
    .default('no')
    .describe('no: those in use; yes: those put by; all: both'),
  after: z.string().max(400).nullable().default(null).describe('`next` of the page before'),
  limit: z.coerce.number().int().min(1).max(500).default(50),
});

/** `next` of a list. */
export const nextSchema = z
  .string()
  .nullable()
  .describe('To be given as `after` for the next page; null on the last');

type Changes<Shape extends z.ZodRawShape> = {
  [Field in keyof Shape]: z.ZodOptional<
    Shape[Field] extends z.ZodDefault<infer Inner extends z.ZodType> ? Inner : Shape[Field]
  >;
};

/** The same fields, none of them needed and none filled in: what is left out of a save stays as it is. */
export function changesTo<Shape extends z.ZodRawShape>(
  whole: z.ZodObject<Shape>,
): z.ZodObject<Changes<Shape>> {
  const fields = Object.entries(whole.shape).map(([field, schema]) => [
    field,
    z.optional(schema instanceof z.ZodDefault ? schema.removeDefault() : schema),
  ]);
  return z.object(Object.fromEntries(fields)) as z.ZodObject<Changes<Shape>>;
}
