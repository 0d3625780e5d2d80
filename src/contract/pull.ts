import { z } from 'zod';
import {
  type EyeTones,
  type NewPull,
  type Pull,
  type PullDifferences,
  type PullDraft,
  type PullPhotograph,
  pullKinds,
} from '../records/pull.ts';
import { chipSchema } from './chips.ts';
import { changesTo, idSchema, keptFields, momentSchema, noteSchema, versionSchema } from './common.ts';
import { photographIdSchema } from './photograph.ts';
import { cornersSchema } from './point.ts';

const words = z.string().trim().min(1).max(200);
const picked = z.object({ id: idSchema.nullable().default(null), words });
const minutes = z.number().min(0).max(1e7).nullable().default(null);
const tone = z.number().min(0).max(1).nullable().default(null);

const pullPhotographSchema = z.object({
  photograph: photographIdSchema,
  takenAt: momentSchema.nullable().default(null),
  ageMinutes: minutes.describe('Minutes since the pull; null: worked out from madeAt and takenAt'),
  corners: cornersSchema
    .nullable()
    .default(null)
    .describe("Where the stone's TL, TR, BR, BL came to lie, px; null: they are looked for"),
  chips: z
    .array(chipSchema.omit({ photo: true }))
    .max(100)
    .default([]),
}) satisfies z.ZodType<PullPhotograph>;

const eyeTonesSchema = z
  .object({
    lights: tone,
    middles: tone,
    darks: tone,
    ageMinutes: minutes,
    who: z.string().max(100).default(''),
  })
  .refine(({ lights, middles, darks }) => [lights, middles, darks].some((value) => value !== null), {
    message: 'neither lights, middles nor darks were read',
  }) satisfies z.ZodType<EyeTones>;

const faultSchema = z.object({
  words,
  closed: z
    .object({ at: momentSchema, words: z.string().max(500).default('') })
    .nullable()
    .default(null),
});

/** What a person writes about a pull; only number and paper are asked for. */
export const pullDraftSchema = z.object({
  number: z.int('the number of a pull is a whole number').min(1).max(100_000),
  kind: z.enum(pullKinds).default('proof'),
  paper: picked,
  damp: z.boolean().nullable().default(null),
  madeAt: momentSchema.nullable().default(null),
  ink: picked.nullable().default(null),
  charges: z.int().min(0).max(1000).nullable().default(null),
  passes: z.int().min(0).max(1000).nullable().default(null),
  pressureEighths: z
    .number()
    .min(-100)
    .max(200)
    .nullable()
    .default(null)
    .describe('Eighths of a turn from contact'),
  packing: words.nullable().default(null),
  roller: picked.nullable().default(null),
  who: words.nullable().default(null),
  photographs: z
    .array(pullPhotographSchema)
    .max(20)
    .refine((all) => new Set(all.map(({ photograph }) => photograph)).size === all.length, {
      message: 'the same photograph is given twice: set the sheet up afresh and take another',
    })
    .default([]),
  eye: eyeTonesSchema.nullable().default(null).describe('Told by eye from the hatch scale'),
  faults: z.array(faultSchema).max(50).default([]),
  remarks: noteSchema,
}) satisfies z.ZodType<PullDraft>;

/** A pull to be kept, once for each id. */
export const newPullSchema = pullDraftSchema.extend({
  id: z
    .string()
    .regex(/^[0-9a-f]{24}$/, 'an id made on a device is 24 hexadecimal digits')
    .optional()
    .describe('Made on the device: sent again under it, the pull is kept once'),
}) satisfies z.ZodType<NewPull>;

/** A save of a pull: what is left out stays. */
export const pullSaveSchema = changesTo(pullDraftSchema).extend({ version: versionSchema });

export const pullSchema = pullDraftSchema.extend({
  ...keptFields,
  workId: z.string(),
  impression: z
    .object({ edition: z.string(), id: z.string() })
    .optional()
    .describe('There where it is an impression of an edition'),
}) satisfies z.ZodType<Pull>;

export { pullPhotographSchema };

export const pullDifferencesSchema = z.object({
  since: z.int().nullable(),
  differences: z.array(
    z.object({
      what: z.string(),
      earlier: z.string().nullable(),
      later: z.string().nullable(),
      verdict: z.enum(['changed', 'unchanged', 'unknown']),
      note: z.string(),
    }),
  ),
}) satisfies z.ZodType<PullDifferences>;
