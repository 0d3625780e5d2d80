import { z } from 'zod';
import type { EditionReadings } from '../records/editionReadings.ts';
import {
  type PullChange,
  type PullEntry,
  type PullMeasuring,
  type PullTones,
  pullTonesSchema as schemaName,
} from '../records/pullTones.ts';
import { comparisonStateSchema, measuringProgressSchema } from './comparisonEntry.ts';
import { failureBodySchema } from './failureBody.ts';
import { measuredSchema } from './measured.ts';
import { pullPhotographSchema, pullSchema } from './pull.ts';

/** The record was checked where it was made; here it only passes through. */
const tonesSchema = z
  .custom<PullTones>(
    (value) =>
      typeof value === 'object' && value !== null && 'schema' in value && value.schema === schemaName,
  )
  .describe('See PullTones in src/records/pullTones.ts');

export const pullMeasuringSchema = z.object({
  photograph: z.string(),
  state: comparisonStateSchema,
  progress: measuringProgressSchema.nullable(),
  failure: failureBodySchema.nullable(),
  tones: tonesSchema.nullable(),
}) satisfies z.ZodType<PullMeasuring>;

export const pullEntrySchema = pullSchema.extend({
  photographs: z.array(
    pullPhotographSchema.extend({
      age: z.object({ minutes: z.number(), basis: z.enum(['typed', 'from the times']) }).nullable(),
      measuring: pullMeasuringSchema.nullable(),
    }),
  ),
}) satisfies z.ZodType<PullEntry>;

export const editionReadingsSchema = z.object({
  approval: pullEntrySchema.nullable().describe('The approved pull; null: none is named'),
  impressions: z.array(z.object({ impression: z.string(), n: z.int(), pull: pullEntrySchema })),
}) satisfies z.ZodType<EditionReadings>;

const paired = {
  partner: measuredSchema.nullable(),
  pull: measuredSchema.nullable(),
  difference: measuredSchema.nullable().describe("The pull's minus the partner's"),
  change: z.enum(['held', 'lighter', 'darker', 'lost', 'filled', 'scum', 'undecided']),
};

export const pullChangeSchema = z.object({
  partner: z.enum(['drawn', 'inked', 'last', 'best', 'pull']),
  number: z.int().nullable(),
  measure: z.enum(['darkness', 'coverage']),
  tones: z.object({ lights: z.object(paired), middles: z.object(paired), darks: z.object(paired) }),
  zones: z.array(z.object({ id: z.string(), name: z.string(), ...paired })),
  strength: z.object({ partner: measuredSchema.nullable(), pull: measuredSchema.nullable() }),
  sentences: z.array(z.string()),
  warnings: z.array(z.string()),
  maps: z
    .object({
      lighter: z.string(),
      darker: z.string(),
      pxPerMm: z.number(),
      lighterFraction: z.number(),
      darkerFraction: z.number(),
    })
    .nullable(),
}) satisfies z.ZodType<PullChange>;
