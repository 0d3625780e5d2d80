import { z } from 'zod';
import type { SeriesAnswer } from '../records/proofSeries.ts';
import type {
  Approval,
  ApprovalInput,
  KeptSeriesSettings,
  RoomNoise,
  WorkSeries,
} from '../records/workSeries.ts';
import { momentSchema } from './common.ts';
import { measuredSchema } from './measured.ts';
import { pointSchema } from './point.ts';

const areaSchema = z.object({
  origin: z.enum(['zones', 'chosen']).default('chosen'),
  zones: z.array(z.string().max(100)).max(500).default([]),
  polygonsMm: z.array(z.array(pointSchema).min(3).max(2000)).max(100).describe('Stone mm'),
});
const areasSchema = z.object({ lights: areaSchema, middles: areaSchema, darks: areaSchema });
const toleranceSchema = z
  .number()
  .positive()
  .max(1)
  .describe('Darkness that the artist accepts as no change');
const referenceSchema = z
  .object({ darkness: z.number().min(0.2).max(1), pull: z.int().nullable().default(null) })
  .nullable()
  .describe('Darkness of a full film that all pulls are held against');
const bestSchema = z.int().min(1).nullable().describe('Number of the best pull so far');

export const seriesSettingsSchema = z.object({
  workId: z.string(),
  version: z.int().describe('0 where nothing was settled yet'),
  changedAt: momentSchema.nullable(),
  tolerance: toleranceSchema,
  areas: areasSchema,
  reference: referenceSchema,
  best: bestSchema,
}) satisfies z.ZodType<KeptSeriesSettings>;

/** A save of the settings: what is left out stays. */
export const seriesSettingsSaveSchema = z.object({
  version: z.int().min(0),
  tolerance: toleranceSchema.optional(),
  areas: areasSchema.optional(),
  reference: referenceSchema.optional(),
  best: bestSchema.optional(),
});

export const roomNoiseSchema = z.object({
  sigma: measuredSchema.nullable(),
  origin: z.enum(['repeats', 'typed', 'unknown']),
  sheets: z.int(),
  degreesOfFreedom: z.int(),
  typed: z.number().nullable(),
  version: z.int(),
  ask: z.string().nullable(),
}) satisfies z.ZodType<RoomNoise>;

export const roomNoiseSaveSchema = z.object({
  version: z.int().min(0),
  typed: z.number().positive().max(1).nullable().describe('σ of one reading; null: none typed'),
});

const fitted = z.object({ value: z.number(), low: z.number(), high: z.number() });
const toneName = z.enum(['lights', 'middles', 'darks']);

const seriesAnswerSchema = z.object({
  steady: z.union([z.boolean(), z.literal('unknown')]),
  state: z.enum(['steady', 'not-yet', 'growing', 'fading', 'cannot-tell']),
  since: z.number().nullable(),
  reason: z.string(),
  plateau: z.object({ pull: fitted }).nullable(),
  warnings: z.array(z.string()),
  compared: z.array(z.number()),
  tones: z.array(z.object({ tone: toneName, change: fitted, plateau: fitted.nullable() })),
}) satisfies z.ZodType<SeriesAnswer>;

const tonesOf = <T extends z.ZodType>(value: T) => z.object({ lights: value, middles: value, darks: value });

export const workSeriesSchema = z.object({
  workId: z.string(),
  tolerance: z.number(),
  noise: roomNoiseSchema,
  sigma: z.number().nullable(),
  answer: seriesAnswerSchema,
  pulls: z.array(
    z.object({
      id: z.string(),
      number: z.int(),
      paper: z.string(),
      age: z.union([z.number(), z.string()]).nullable(),
      how: z.enum(['camera', 'eye', 'unread']),
      readings: z.int(),
      tones: tonesOf(measuredSchema.nullable()),
      openFaults: z.array(z.string()),
      compared: z.boolean(),
    }),
  ),
  goodToPrint: z.object({
    met: z.boolean(),
    pulls: z.array(z.int()),
    missing: z.array(z.string()),
    reading: z
      .object({ how: z.enum(['camera', 'eye', 'unread']), doubt: z.number().nullable() })
      .describe('How the pulls were read, and ± of one reading at 95 %'),
  }),
  readAgain: z.object({ pull: z.int(), why: z.string() }).nullable(),
}) satisfies z.ZodType<WorkSeries>;

const mark = z.string().trim().max(100).describe('Initials or mark');

export const approvalInputSchema = z.object({
  pull: z.int().min(1),
  artist: mark.default(''),
  printer: mark.default(''),
}) satisfies z.ZodType<ApprovalInput>;

export const withdrawalSchema = z.object({
  who: z.string().trim().min(1).max(100),
  why: z.string().trim().min(1, 'say why').max(2000),
});

export const approvalSchema = z.object({
  id: z.string(),
  workId: z.string(),
  pullId: z.string(),
  pull: z.int(),
  givenAt: momentSchema,
  artist: z.string(),
  printer: z.string(),
  restsOn: z.array(z.int()),
  tolerance: z.number(),
  photograph: z.string().nullable(),
  tones: tonesOf(z.number().nullable()),
  withdrawn: z.object({ at: momentSchema, who: z.string(), why: z.string() }).nullable(),
  restsOnIt: z.array(z.string()),
}) satisfies z.ZodType<Approval>;

export const approvalListSchema = z.object({ approvals: z.array(approvalSchema) });
