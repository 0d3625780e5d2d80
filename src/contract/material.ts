import { z } from 'zod';
import type { HazardClass, Material, MaterialDraft } from '../records/material.ts';
import {
  changesTo,
  daySchema,
  keptFields,
  nameSchema,
  nextSchema,
  noteSchema,
  pageQuerySchema,
  versionSchema,
} from './common.ts';
import { lineStageSchema } from './lineStage.ts';

const words = z.string().trim().max(2000).default('');

export const hazardClassSchema = z.enum([
  'flammable',
  'oxidising',
  'corrosive',
  'toxic',
  'irritant',
  'sensitising',
  'long-term',
  'environment',
  'dust-explosive',
]) satisfies z.ZodType<HazardClass>;

/** What a person enters of a material; null or empty means not stated. */
export const materialDraftSchema = z.object({
  name: nameSchema.describe('By what it is, never by what it is sold as'),
  stages: z.array(lineStageSchema).max(40).default([]),
  hazards: z
    .array(hazardClassSchema)
    .max(9)
    .nullable()
    .default(null)
    .describe('null: the sheet was not read; empty: it states none'),
  statements: words.describe('Hazard statements as the sheet prints them'),
  sheetDate: daySchema.nullable().default(null),
  sheetPlace: words.describe('Where the sheet itself is kept'),
  limitMgPerM3: z.number().positive().max(100_000).nullable().default(null),
  flashPointC: z.number().min(-100).max(400).nullable().default(null),
  gramsPerMl: z.number().min(0.3).max(3).nullable().default(null),
  protection: words,
  firstAid: words,
  storage: words,
  waste: words,
  note: noteSchema,
}) satisfies z.ZodType<MaterialDraft>;

/** A save of a material: what is left out stays. */
export const materialSaveSchema = changesTo(materialDraftSchema).extend({ version: versionSchema });

export const materialSchema = materialDraftSchema.extend({
  ...keptFields,
}) satisfies z.ZodType<Material>;

export const materialListQuerySchema = pageQuerySchema;

export const materialListSchema = z.object({ materials: z.array(materialSchema), next: nextSchema });
