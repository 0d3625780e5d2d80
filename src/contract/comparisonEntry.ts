import { z } from 'zod';
import { type ComparisonRecord, comparisonSchema } from '../records/comparison.ts';
import type { ComparisonEntry, ComparisonSummary } from '../records/comparisonEntry.ts';
import { comparisonRequestSchema } from './comparisonRequest.ts';
import { failureBodySchema } from './failureBody.ts';

export const comparisonStateSchema = z.enum([
  'waiting',
  'measuring',
  'measured',
  'refused',
  'not-done',
  'stopped',
]);

export const measuringProgressSchema = z.object({
  stage: z.enum(['reading', 'matching', 'light', 'tones', 'maps', 'sheets']),
  fraction: z.number().min(0).max(1),
});

export const comparisonSummarySchema = z.object({
  id: z.string(),
  title: z.string(),
  createdAt: z.string().describe('ISO 8601 with zone'),
  state: comparisonStateSchema,
  progress: measuringProgressSchema.nullable(),
  finding: z.string().nullable().describe('The finding in one sentence; null until measured'),
  sample: z.boolean().describe('Made by the invented studio that ships with Stonetone'),
}) satisfies z.ZodType<ComparisonSummary>;

export const comparisonListSchema: z.ZodType<{
  readonly comparisons: readonly ComparisonSummary[];
  readonly next: string | null;
}> = z.object({
  comparisons: z.array(comparisonSummarySchema),
  next: z.string().nullable().describe('To be given as `after` for the next page; null on the last'),
});

/** The record was checked where it was made; here it only passes through, whatever else it holds. */
const recordSchema = z
  .custom<ComparisonRecord>(
    (value) =>
      typeof value === 'object' && value !== null && 'schema' in value && value.schema === comparisonSchema,
  )
  .describe('The content of comparison.json');

export const comparisonEntrySchema: z.ZodType<ComparisonEntry> = comparisonSummarySchema.extend({
  request: comparisonRequestSchema.extend({
    only: z.literal('patches').optional().describe('Made by a test stone: nothing but its patches is read'),
  }),
  record: recordSchema.nullable(),
  failure: failureBodySchema.nullable(),
  files: z.array(z.string()),
});
