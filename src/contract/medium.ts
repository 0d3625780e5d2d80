import { z } from 'zod';
import type { MediumEntry, StrengthRule } from '../records/medium.ts';
import { changesTo, nameSchema, versionSchema } from './common.ts';

const strength = z.enum(['ground', 'scant', 'light', 'middle', 'dark']);

const ruleSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('fixed'), strength }),
  z.object({ kind: z.literal('by-deposit'), otherwise: strength.nullable().default(null) }),
  z.object({ kind: z.literal('none') }),
]) satisfies z.ZodType<StrengthRule>;

/** A medium of the studio's own. Its id, by which zones name it, never changes. */
export const mediumDraftSchema = z.object({
  id: z
    .string()
    .regex(/^[a-z0-9][a-z0-9-]{0,98}$/, 'an id is lower case letters, figures and hyphens')
    .describe('How zones name it, such as river-crayon'),
  name: nameSchema,
  rule: ruleSchema,
});

export const mediumSaveSchema = changesTo(mediumDraftSchema.omit({ id: true })).extend({
  version: versionSchema,
});

export const mediumEntrySchema = z.object({
  id: z.string(),
  name: z.string(),
  rule: ruleSchema,
  own: z.boolean().describe('False for the starting catalogue, which stays as it is'),
  version: z.int(),
  works: z.int().describe('How many works have a zone in it'),
}) satisfies z.ZodType<MediumEntry>;

export const mediumListSchema = z.object({ media: z.array(mediumEntrySchema) });
