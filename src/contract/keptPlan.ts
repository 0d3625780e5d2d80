import { z } from 'zod';
import type { EtchPlan, PlanRequest } from '../records/etch.ts';
import type {
  KeptPlan,
  KeptSecondEtch,
  PlanChoices,
  PlanSummary,
  SecondEtchChoices,
} from '../records/keptPlan.ts';
import type { SecondEtchPlan, SecondEtchZone } from '../records/secondEtch.ts';
import { idSchema, momentSchema } from './common.ts';
import { etchTableSchema } from './etchTable.ts';
import { photographIdSchema } from './photograph.ts';
import { planInputSchema } from './planInput.ts';

const feasible = z.union([z.boolean(), z.literal('unknown')]);
const tableVersion = z.int().min(1).nullable().default(null).describe('The newest unless given');

/** What a plan is made with; the zones are the work's. */
export const planChoicesSchema = planInputSchema
  .pick({
    tannic: true,
    people: true,
    filmMm: true,
    stages: true,
    gapFilmMm: true,
    layMm2PerSecond: true,
    guardMm: true,
  })
  .extend({
    tableId: idSchema.default('tannic'),
    tableVersion,
    tannicBatchId: idSchema
      .nullable()
      .default(null)
      .describe('The tannic solution by its batch; then no `tannic`'),
    splitFrom: photographIdSchema
      .nullable()
      .default(null)
      .describe(
        'An attached photograph with corners: washes that span deposits are split by their tone on it',
      ),
  })
  .refine(({ tannic, tannicBatchId }) => tannic === null || tannicBatchId === null, {
    message: 'give the tannic solution by its batch or as typed, not both',
    path: ['tannic'],
  }) satisfies z.ZodType<PlanChoices>;

const planSummarySchema = z.object({
  id: z.string(),
  createdAt: momentSchema,
  workVersion: z.int().describe('The version of the work that it was made from'),
  table: z.object({ id: z.string(), version: z.int(), name: z.string() }),
  feasible,
}) satisfies z.ZodType<PlanSummary>;

export const planListSchema = z.object({ plans: z.array(planSummarySchema) });

/** Plans and requests were checked where they were made; here they only pass through. */
const passing = <T>(description: string) =>
  z.custom<T>((value) => typeof value === 'object' && value !== null).describe(description);

export const keptPlanSchema = planSummarySchema.extend({
  workId: z.string(),
  tannicBatchId: z.string().nullable(),
  request: passing<PlanRequest>('Stone, zones, table and choices as they were'),
  plan: passing<EtchPlan>('The content of plan.json'),
}) satisfies z.ZodType<KeptPlan>;

const readingSchema = z.enum(['as drawn', 'lights lost', 'closing', 'scum', 'not read']);

/** What a second etch is planned from: how each zone rolled up and printed. */
export const secondEtchChoicesSchema = z.object({
  tableId: idSchema.default('tannic'),
  tableVersion,
  line: z.enum(['full', 'quick']),
  readings: z
    .array(z.object({ zone: idSchema, reading: readingSchema }))
    .max(500)
    .default([])
    .describe('A zone that is left out counts as not read'),
  planId: idSchema.nullable().default(null).describe("The first etch's plan; the newest unless given"),
}) satisfies z.ZodType<SecondEtchChoices>;

const strength = z.enum(['ground', 'scant', 'light', 'middle', 'dark']).nullable();

const secondEtchPlanSchema = z.object({
  line: z.enum(['full', 'quick']),
  zones: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      strength,
      etch: z.string().nullable(),
      why: z.string(),
    }),
  ),
  steps: z.array(z.object({ what: z.string(), endSign: z.string(), basis: z.string() })),
  cautions: z.array(z.string()),
}) satisfies z.ZodType<SecondEtchPlan>;

const secondEtchZoneSchema = z.object({
  id: z.string(),
  name: z.string(),
  first: strength,
  reading: readingSchema,
}) satisfies z.ZodType<SecondEtchZone>;

export const keptSecondEtchSchema = z.object({
  id: z.string(),
  workId: z.string(),
  createdAt: momentSchema,
  workVersion: z.int(),
  table: etchTableSchema,
  planId: z.string().nullable(),
  zones: z.array(secondEtchZoneSchema),
  plan: secondEtchPlanSchema,
}) satisfies z.ZodType<KeptSecondEtch>;

export const secondEtchListSchema = z.object({ secondEtches: z.array(keptSecondEtchSchema) });
