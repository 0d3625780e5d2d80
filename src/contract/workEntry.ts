import { z } from 'zod';
import type { BorderCheck } from '../records/stoneVerdicts.ts';
import type { WorkEntry, WorkSummary, WorkVerdicts } from '../records/workEntry.ts';
import { momentSchema, nextSchema, pageQuerySchema } from './common.ts';
import { pointSchema } from './point.ts';
import { gumStateSchema } from './rack.ts';
import { keptStoneSchema } from './stone.ts';
import { workSchema } from './work.ts';
import { workStageSchema } from './workStage.ts';

const edges = <T extends z.ZodType>(value: T) =>
  z.object({ top: value, right: value, bottom: value, left: value });

const bordersSchema = z.object({
  marginsMm: edges(z.number()),
  enough: edges(z.boolean()),
  sentences: z.array(z.string()),
  scraperMm: z.object({ least: z.number(), most: z.number() }).nullable(),
}) satisfies z.ZodType<BorderCheck>;

const verdictsSchema = z.object({
  areasCm2: z.array(z.object({ zone: z.string(), areaCm2: z.number() })),
  groundCm2: z.number(),
  overlaps: z.array(z.object({ a: z.string(), b: z.string(), areaCm2: z.number() })),
  gaps: z.array(z.object({ a: z.string(), b: z.string(), gapMm: z.number() })),
  image: z.object({ topLeftMm: pointSchema, bottomRightMm: pointSchema }).nullable(),
  borders: bordersSchema.nullable(),
  sentences: z.array(z.string()),
}) satisfies z.ZodType<WorkVerdicts>;

export const workEntrySchema = workSchema.extend({
  stone: keptStoneSchema,
  verdicts: verdictsSchema,
}) satisfies z.ZodType<WorkEntry>;

const workSummarySchema = z.object({
  id: z.string(),
  title: z.string(),
  stoneId: z.string(),
  stoneName: z.string(),
  stage: workStageSchema,
  halfway: z.boolean().describe('Entered with a past of which only part is known'),
  zones: z.int(),
  putBy: z.boolean(),
  version: z.int(),
  changedAt: momentSchema,
  sample: z.boolean(),
  gum: gumStateSchema.nullable().describe('Whether its stone lies under gum; null for one that is put by'),
}) satisfies z.ZodType<WorkSummary>;

export const workListQuerySchema = pageQuerySchema.extend({
  stone: z.string().max(100).nullable().default(null).describe('Only works on this stone'),
  stage: workStageSchema.nullable().default(null).describe('Only works at this stage'),
});

export const workListSchema = z.object({ works: z.array(workSummarySchema), next: nextSchema });
