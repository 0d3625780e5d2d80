import { z } from 'zod';
import type { CopiesState, CopyBusy, CopyCheck, DailyCopy } from '../records/copies.ts';
import { daySchema, momentSchema } from './common.ts';
import { failureBodySchema } from './failureBody.ts';

const count = z.int().min(0);

const checkSchema = z.object({
  at: momentSchema,
  failure: failureBodySchema.nullable().describe('null: every byte is as it was saved'),
  madeAt: momentSchema.nullable(),
  photographs: count.nullable(),
  concerns: z.array(z.string()),
}) satisfies z.ZodType<CopyCheck>;

const copySchema = z.object({
  day: daySchema,
  file: z.string(),
  bytes: count,
  check: checkSchema.nullable().describe('null: not read back since Stonetone was started'),
}) satisfies z.ZodType<DailyCopy>;

const busySchema = z.object({
  act: z.enum(['copying', 'checking']),
  day: daySchema,
  since: momentSchema,
  bytes: count.nullable().describe('Written so far'),
}) satisfies z.ZodType<CopyBusy>;

/** How the daily copies stand. */
export const copiesStateSchema = z.object({
  folder: z.string().nullable().describe('null: none are made'),
  lastGood: z.object({ file: z.string(), madeAt: momentSchema }).nullable(),
  notMade: z.object({ at: momentSchema, failure: failureBodySchema }).nullable(),
  busy: busySchema.nullable(),
  copies: z.array(copySchema),
  keeps: z.object({ days: count, weeks: count, months: count }),
  freeBytes: count.nullable(),
  sameDisk: z.boolean().nullable().describe('Whether they lie on the disk that holds the data'),
}) satisfies z.ZodType<CopiesState>;

/** Where copies are to go. */
export const copiesFolderSchema = z.object({
  folder: z
    .string()
    .trim()
    .min(1)
    .max(2000)
    .nullable()
    .describe('A folder that is there, by its whole path; null: no more are made'),
});
