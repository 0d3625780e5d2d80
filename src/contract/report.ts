import { z } from 'zod';
import type { Replacement, Report, ReportDraft, ReportWords } from '../records/report.ts';
import type { SetReport } from '../records/setReport.ts';
import {
  changesTo,
  daySchema,
  idSchema,
  keptFields,
  nameSchema,
  nextSchema,
  versionSchema,
} from './common.ts';

const words = z
  .array(z.union([z.string().max(20_000), z.strictObject({ figure: nameSchema })]))
  .max(1000)
  .default([])
  .describe(
    'Text as typed, and figures by name where they stand: `["We made ", {"figure": "pulls"}, " pulls."]`; an empty line of the text parts paragraphs',
  );
const wordsSchema = z.object({
  aims: words,
  tried: words,
  found: words,
  materials: words,
  edition: words,
  next: words,
}) satisfies z.ZodType<ReportWords>;

const replacementSchema = z.object({
  before: nameSchema.describe('What was used before, by what it is'),
  beforeMaterialId: idSchema.nullable().default(null),
  beforeMl: z
    .number()
    .min(0)
    .max(1e6)
    .nullable()
    .default(null)
    .describe('For the same works; null: not known'),
  beforeFrom: z.string().max(2000).default('').describe('Where the amount is from'),
  now: nameSchema.describe('What takes its place, as plans name it'),
  nowMaterialId: idSchema.nullable().default(null),
}) satisfies z.ZodType<Replacement>;

const ids = z.array(idSchema).max(200).default([]);
const draft = z.object({
  title: nameSchema,
  reader: z.string().trim().max(200).default('').describe('Whom it is for'),
  from: daySchema.nullable().default(null),
  to: daySchema.nullable().default(null),
  works: ids,
  comparisons: ids,
  editions: ids,
  words: wordsSchema.default(wordsSchema.parse({})),
  replacements: z.array(replacementSchema).max(50).default([]),
});

/** What a person writes of a report. */
export const reportDraftSchema = draft satisfies z.ZodType<ReportDraft>;

/** A save of a report: what is left out stays. */
export const reportSaveSchema = changesTo(draft).extend({ version: versionSchema });

export const reportSchema = draft.extend({
  ...keptFields,
}) satisfies z.ZodType<Report>;

export const reportListSchema = z.object({ reports: z.array(reportSchema), next: nextSchema });

/** A report as it is set only passes through; `src/records/setReport.ts` says what it holds. */
export const setReportSchema = z
  .custom<SetReport>((value) => typeof value === 'object' && value !== null)
  .describe('SetReport');
