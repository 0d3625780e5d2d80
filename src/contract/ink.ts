import { z } from 'zod';
import type { InkDraft, InkEntry } from '../records/ink.ts';
import type { InkAnswer, InkQuestion } from '../records/inkAnswer.ts';
import {
  changesTo,
  daySchema,
  idSchema,
  keptFields,
  momentSchema,
  nameSchema,
  nextSchema,
  noteSchema,
  pageQuerySchema,
  versionSchema,
} from './common.ts';
import { measuredSchema } from './measured.ts';

const words = z.string().trim().max(200).default('');
const parts = z.number().min(0).max(1000).nullable().default(null);
const verdictSchema = z.enum(['good', 'too soft', 'too stiff', 'other']);

export const inkDraftSchema = z.object({
  name: nameSchema,
  workId: idSchema.nullable().default(null).describe('The work that it was made for'),
  madeOn: daySchema.nullable().default(null),
  softInk: words,
  stiffInk: words,
  softParts: parts.describe('Parts by weight, soft to stiff'),
  stiffParts: parts,
  inkGrams: z.number().positive().max(100_000).nullable().default(null).describe('Both inks, no modifier'),
  modifier: words,
  modifierPercent: z
    .number()
    .min(0)
    .max(100)
    .nullable()
    .default(null)
    .describe('Per cent by weight on the ink'),
  strings: z
    .array(z.object({ at: momentSchema, cm: z.number().min(0).max(100), note: words }))
    .max(200)
    .default([]),
  verdict: verdictSchema.nullable().default(null),
  verdictWords: z.string().trim().max(1000).default(''),
  note: noteSchema,
}) satisfies z.ZodType<InkDraft>;

export const inkSaveSchema = changesTo(inkDraftSchema).extend({ version: versionSchema });

const number = z.number().nullable();

export const inkEntrySchema = inkDraftSchema.extend({
  ...keptFields,
  softPercent: number,
  softGrams: number,
  stiffGrams: number,
  modifierGrams: number,
  modifierOfWholePercent: number,
  workTitle: z.string().nullable(),
}) satisfies z.ZodType<InkEntry>;

export const inkListQuerySchema = pageQuerySchema.extend({
  work: idSchema.nullable().default(null),
  verdict: verdictSchema.nullable().default(null),
});

export const inkListSchema = z.object({ inks: z.array(inkEntrySchema), next: nextSchema });

const area = z.number().min(0).max(100_000).default(0);
const pulls = z.int().min(0).max(10_000).default(0);
const viscosity = z.number().positive().max(1e6);

export const inkQuestionSchema = z.object({
  areasCm2: z.object({ light: area, middle: area, dark: area }),
  solidShare: z.number().min(0).max(1).nullable().default(null),
  coveredCm2: z.number().min(0).max(100_000).nullable().default(null),
  modifierPercent: z.number().min(0).max(100).nullable().default(null),
  proofs: pulls,
  edition: pulls,
  viscosityPaS: z.object({ soft: viscosity, stiff: viscosity }).nullable().default(null),
}) satisfies z.ZodType<InkQuestion>;

const amounts = z.object({ softGrams: z.number(), stiffGrams: z.number(), modifierGrams: z.number() });

export const inkAnswerSchema = z.object({
  parts: z.object({ soft: z.number(), stiff: z.number() }).nullable(),
  why: z.string(),
  proofsGrams: measuredSchema.nullable(),
  editionGrams: measuredSchema.nullable(),
  mix: z.object({ low: amounts, high: amounts }).nullable(),
  modifier: z.object({ onInkPercent: z.number(), ofWholePercent: z.number() }).nullable(),
  stiffness: z.object({ paS: z.number(), words: z.string() }).nullable(),
  warnings: z.array(z.string()),
}) satisfies z.ZodType<InkAnswer>;

export const workInkQuerySchema = z.object({
  proofs: z.coerce.number().int().min(0).max(10_000).default(5),
  edition: z.coerce.number().int().min(0).max(10_000).default(0),
  modifierPercent: z.coerce.number().min(0).max(100).nullable().default(null),
});
