import { z } from 'zod';
import {
  type OwnEtch,
  type PlannedTreatment,
  type TestPlanDraft,
  treatmentKinds,
  treatmentReaches,
} from '../records/testPlan.ts';
import type { TestPlanEntry } from '../records/testPlanEntry.ts';
import { trialBlocks } from '../records/trialDesign.ts';
import { changesTo, idSchema, nextSchema, pageQuerySchema, versionSchema } from './common.ts';

const level = z.string().trim().min(1).max(120);
const levels = z.array(level).max(60).default([]);

const treatmentSchema = z.object({
  name: z.string().max(60).default(''),
  kind: z
    .enum(treatmentKinds)
    .default('other')
    .describe('At which stage it is given, and what its levels are checked against'),
  levels,
  reach: z.enum(treatmentReaches).default('patch').describe('To what it is given at once'),
  newLevels: levels.describe('Levels that are in no list here, said to be new ones'),
}) satisfies z.ZodType<PlannedTreatment>;

const ownEtchSchema = z.object({
  level,
  parts: z
    .array(z.object({ material: z.string().trim().min(1).max(60), parts: z.number().positive().max(1000) }))
    .min(1)
    .max(6)
    .describe('Parts by volume'),
  strength: z
    .enum(['scant', 'light', 'middle', 'dark'])
    .default('middle')
    .describe('The strength of the etch table that it is handled like'),
  contactSeconds: z.int().min(5).max(7200),
}) satisfies z.ZodType<OwnEtch>;

const draft = z.object({
  title: z.string().max(120).default(''),
  treatments: z.array(treatmentSchema).max(3).default([]),
  control: z.string().max(120).nullable().default(null),
  widthMm: z.number().min(60).max(3000).default(300),
  heightMm: z.number().min(60).max(3000).default(400),
  stones: z.int().min(1).max(24).default(3),
  patchRepeats: z.int().min(1).max(12).default(1),
  stripRepeats: z.int().min(1).max(6).default(1),
  lay: z.enum(['blocked', 'row-column']).default('blocked'),
  blocks: z.enum(trialBlocks).default('head-tail').describe('How a stone is parted into blocks'),
  wanted: z.number().positive().max(1).nullable().default(null),
  cameraPixels: z.number().min(200).max(100_000).nullable().default(null),
  seed: z.int().min(0).max(4_294_967_295).default(1),
  ownEtches: z.array(ownEtchSchema).max(24).default([]).describe('Etches that are in no table'),
});

/** A test as it is planned, half typed too. */
export const testPlanDraftSchema = draft satisfies z.ZodType<TestPlanDraft>;

/** A save of a planned test: what is left out stays. */
export const testPlanSaveSchema = changesTo(draft).extend({ version: versionSchema });

export const testPlanListQuerySchema = pageQuerySchema.extend({
  made: z
    .enum(['no', 'yes', 'all'])
    .default('no')
    .describe('no: those that no stone was made of yet; yes: those with stones; all: both'),
});

/** What making stones of a plan starts from. */
export const planVersionSchema = z.object({ version: versionSchema });

/** A plan and what follows from it; only passes through: `src/records/testPlanEntry.ts` says what it holds. */
export const testPlanSchema = z
  .custom<TestPlanEntry>((value) => typeof value === 'object' && value !== null)
  .describe('TestPlanEntry');

export const testPlanListSchema = z.object({ testPlans: z.array(testPlanSchema), next: nextSchema });

export const testPlanParamsSchema = z.object({ id: idSchema });
