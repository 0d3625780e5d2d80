import { z } from 'zod';
import type { BatchDraft, BatchEntry } from '../records/batch.ts';
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

const common = {
  name: nameSchema,
  madeOn: daySchema.nullable().default(null),
  note: noteSchema,
};
const pH = z.number().min(0).max(14).nullable().default(null);

const gum = z.object({
  ...common,
  kind: z.literal('gum'),
  smell: z.enum(['fresh', 'sweet', 'sour']).nullable().default(null),
  baume: z.number().min(0).max(40).nullable().default(null),
  pH,
});

const tannic = z.object({
  ...common,
  kind: z.literal('tannic'),
  gramsPerLitre: z.number().positive().max(1000).nullable().default(null),
  pH,
  gum: z.boolean().nullable().default(null).describe('Whether it holds gum'),
});

const bought = z.object({
  ...common,
  kind: z.enum(['washout', 'base']),
  product: z.string().trim().max(200).default(''),
  opened: daySchema.nullable().default(null),
  lot: z.string().trim().max(200).default(''),
});

/** What a person writes about a batch; null means not measured or not stated. */
export const batchDraftSchema = z.discriminatedUnion('kind', [
  gum,
  tannic,
  bought,
]) satisfies z.ZodType<BatchDraft>;

const saved = { version: versionSchema };

/** A save of a batch: what is left out stays; the kind is named, and stays too. */
export const batchSaveSchema = z.discriminatedUnion('kind', [
  changesTo(gum).extend({ ...saved, kind: gum.shape.kind }),
  changesTo(tannic).extend({ ...saved, kind: tannic.shape.kind }),
  changesTo(bought).extend({ ...saved, kind: bought.shape.kind }),
]);

const kept = {
  ...keptFields,
  ageDays: z
    .int()
    .nullable()
    .describe('Whole days since it was made, else opened; null where neither is known'),
};

export const batchEntrySchema = z.discriminatedUnion('kind', [
  gum.extend(kept),
  tannic.extend(kept),
  bought.extend(kept),
]) satisfies z.ZodType<BatchEntry>;

export const batchListQuerySchema = pageQuerySchema.extend({
  kind: z.enum(['gum', 'tannic', 'washout', 'base']).nullable().default(null),
});

export const batchListSchema = z.object({ batches: z.array(batchEntrySchema), next: nextSchema });
