import { z } from 'zod';
import type { DayPlan, Deadline, KeptDeadline } from '../records/dayPlan.ts';
import type { Week } from '../records/week.ts';
import { daySchema, momentSchema } from './common.ts';
import { lineStageSchema } from './lineStage.ts';
import { paperSchema } from './paper.ts';
import { sheetWords } from './sheetWords.ts';
import { roomTimesSchema } from './studio.ts';

/** Answers are worked out here and only pass through; `src/records` says what they hold. */
const passing = <T>(description: string) =>
  z.custom<T>((value) => typeof value === 'object' && value !== null).describe(description);

/** What a work is to have reached by when. */
export const deadlineSchema = z.object({
  goal: lineStageSchema.default('good-to-print').describe('The stage that is to be done'),
  by: momentSchema,
  second: z.enum(['full', 'quick']).default('full').describe('Which second etch'),
  trialProofs: z.boolean().default(true),
  times: roomTimesSchema.describe('How long stages of this work take, in place of the room’s'),
}) satisfies z.ZodType<Deadline>;

export const deadlineSaveSchema = z.object({
  deadline: deadlineSchema.nullable().describe('null takes it away'),
  version: z.int().min(0).describe('The version that this save started from; 0 where there was none'),
});

export const keptDeadlineSchema = z.object({
  workId: z.string(),
  deadline: deadlineSchema.nullable(),
  version: z.int().min(0),
  changedAt: momentSchema.nullable(),
}) satisfies z.ZodType<KeptDeadline>;

export const deadlineListSchema = z.object({ deadlines: z.array(keptDeadlineSchema) });
export const dayPlanSchema = passing<DayPlan>('DayPlan');
export const weekSchema = passing<Week>('Week');

export const weekQuerySchema = z.object({
  from: daySchema.nullable().default(null).describe('The first of seven days; today unless given'),
});
export const weekSheetQuerySchema = weekQuerySchema.extend({
  paper: paperSchema.default('a4'),
  ...sheetWords,
});
