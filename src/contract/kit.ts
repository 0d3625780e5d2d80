import { z } from 'zod';
import type { KitDraft, KitEntry, LastInHand } from '../records/kit.ts';
import {
  changesTo,
  daySchema,
  keptFields,
  momentSchema,
  nameSchema,
  nextSchema,
  noteSchema,
  pageQuerySchema,
  versionSchema,
} from './common.ts';

const common = { name: nameSchema, note: noteSchema };
const words = z.string().trim().max(200).default('');
const parts = z.number().min(0).max(1000).nullable().default(null);
const widthMm = z.number().positive().max(3000).nullable().default(null);

const roller = z.object({
  ...common,
  tool: z.literal('roller'),
  nap: words.describe('Such as leather, rough or smooth'),
  conditionedOn: daySchema.nullable().default(null),
  widthMm,
});

const ink = z.object({
  ...common,
  tool: z.literal('ink'),
  softParts: parts,
  stiffParts: parts,
  modifierPercent: z.number().min(0).max(100).nullable().default(null),
  stringCm: z.number().min(0).max(100).nullable().default(null).describe('Where a string of it breaks, cm'),
});

const press = z.object({
  ...common,
  tool: z.literal('press'),
  pressureEighths: z
    .number()
    .min(-80)
    .max(80)
    .nullable()
    .default(null)
    .describe('Eighths of a turn from contact'),
  packing: words,
  scraperMm: widthMm,
});

const cloth = z.object({ ...common, tool: z.literal('cloth'), cloth: words });

const paper = z.object({
  ...common,
  tool: z.literal('paper'),
  gramsPerM2: z.number().positive().max(2000).nullable().default(null),
  damp: z.boolean().nullable().default(null),
});

/** What a person writes about a tool or set-up; null or empty means not measured or not stated. */
export const kitDraftSchema = z.discriminatedUnion('tool', [
  roller,
  ink,
  press,
  cloth,
  paper,
]) satisfies z.ZodType<KitDraft>;

const saved = { version: versionSchema };

/** A save of a tool or set-up: what is left out stays; which tool it is is named, and stays too. */
export const kitSaveSchema = z.discriminatedUnion('tool', [
  changesTo(roller).extend({ ...saved, tool: roller.shape.tool }),
  changesTo(ink).extend({ ...saved, tool: ink.shape.tool }),
  changesTo(press).extend({ ...saved, tool: press.shape.tool }),
  changesTo(cloth).extend({ ...saved, tool: cloth.shape.tool }),
  changesTo(paper).extend({ ...saved, tool: paper.shape.tool }),
]);

export const kitEntrySchema = z.discriminatedUnion('tool', [
  roller.extend(keptFields),
  ink.extend(keptFields),
  press.extend(keptFields),
  cloth.extend(keptFields),
  paper.extend(keptFields),
]) satisfies z.ZodType<KitEntry>;

export const kitListQuerySchema = pageQuerySchema.extend({
  tool: z.enum(['roller', 'ink', 'press', 'cloth', 'paper']).nullable().default(null),
});

export const kitListSchema = z.object({ kit: z.array(kitEntrySchema), next: nextSchema });

export const lastInHandSchema = z.object({
  inHand: z.array(
    z.object({
      tool: z.enum(['roller', 'ink', 'batch', 'press', 'cloth', 'paper']),
      id: z.string().nullable(),
      words: z.string(),
      runId: z.string(),
      receivedAt: momentSchema,
    }) satisfies z.ZodType<LastInHand>,
  ),
});
