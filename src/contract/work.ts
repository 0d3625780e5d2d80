import { z } from 'zod';
import type { PastFact, Work, WorkInput, WorkOrigin, WorkRectangle, WorkZone } from '../records/work.ts';
import { attachedPhotographsSchema } from './attachedPhotograph.ts';
import { changesTo, idSchema, keptFields, nameSchema, noteSchema, versionSchema } from './common.ts';
import { pointSchema } from './point.ts';
import { workStageSchema } from './workStage.ts';
import { zoneSchema, zonesSchema } from './zones.ts';

/** More points than a hand draws; all outlines of a work together. Our rule. */
const mostPoints = 20_000;
const share = z.number().min(0).max(1);

const toneSchema = z
  .object({
    mean: share,
    darkest: share,
    basis: z
      .enum(['published', 'common practice', 'memory', 'this room', 'typed', 'measured'])
      .default('typed'),
  })
  .refine(({ mean, darkest }) => darkest >= mean, { message: 'the darkest is lighter than the mean' })
  .nullable()
  .default(null);

export const workZoneSchema = zoneSchema.extend({ tone: toneSchema }) satisfies z.ZodType<WorkZone>;

/** What a history may tell of the time before a work was entered. */
export const historyFactSchema = z.enum([
  'grain',
  'drawn-on',
  'media',
  'powder',
  'first-etch',
  'first-etch-contact',
  'rest',
  'washout',
  'base',
  'roll-up-ink',
  'second-etch',
  'pulls',
  'last-gummed',
]);

const pastFactSchema = z.object({
  fact: historyFactSchema,
  value: z
    .string()
    .trim()
    .max(2000)
    .nullable()
    .transform((text) => (text === '' ? null : text))
    .describe('null: not known'),
}) satisfies z.ZodType<PastFact>;

const originSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('new') }),
  z.object({
    kind: z.literal('halfway'),
    stage: workStageSchema,
    gummed: z.enum(['yes', 'no', 'unknown']).default('unknown'),
    history: z
      .array(pastFactSchema)
      .max(13)
      .default([])
      .describe('What is known; what lies before the stage and is not named here is kept as unknown'),
  }),
]) satisfies z.ZodType<WorkOrigin>;

const rectangleSchema = z.object({
  offsetMm: pointSchema.describe('Its top left corner, stone mm'),
  sizeMm: pointSchema,
}) satisfies z.ZodType<WorkRectangle>;

/** What a person writes about a work; only title and stone are asked for. */
export const workDraftSchema = z.object({
  title: nameSchema,
  stoneId: idSchema,
  head: z.enum(['top', 'right', 'bottom', 'left']).default('top'),
  stage: workStageSchema.nullable().default(null).describe('null: as the origin says, grained for a new one'),
  origin: originSchema.default({ kind: 'new' }),
  rectangle: rectangleSchema.nullable().default(null),
  zones: z
    .array(workZoneSchema)
    .max(500)
    .refine((zones) => zones.reduce((sum, zone) => sum + zone.polygonMm.length, 0) <= mostPoints, {
      message: `the outlines have more than ${mostPoints} points together`,
    })
    .default([])
    .describe('polygonMm in stone mm, from the top left corner of the stone'),
  photographs: attachedPhotographsSchema,
  note: noteSchema,
}) satisfies z.ZodType<WorkInput>;

/** A save of a work: what is left out stays. */
export const workSaveSchema = changesTo(workDraftSchema.extend({ stage: workStageSchema })).extend({
  version: versionSchema,
});

/** zones.json taken in: it replaces the zones. Millimetres from the top left of the work rectangle. */
export const zonesImportSchema = z.object({ version: versionSchema, zones: zonesSchema });

export const workSchema = workDraftSchema.extend({
  stage: workStageSchema,
  ...keptFields,
}) satisfies z.ZodType<Work>;
