import { z } from 'zod';
import type { GrainingEntry, PressSetUp, StraightedgeReading } from '../records/stone.ts';
import type { KeptStone, StoneDraft, StoneEntry, StoneSummary, WorkMention } from '../records/stoneEntry.ts';
import type { StoneVerdict } from '../records/stoneVerdicts.ts';
import { attachedPhotographsSchema } from './attachedPhotograph.ts';
import {
  changesTo,
  keptFields,
  momentSchema,
  nameSchema,
  nextSchema,
  noteSchema,
  versionSchema,
} from './common.ts';
import { measuredSchema } from './measured.ts';
import { gumStateSchema } from './rack.ts';
import { workStageSchema } from './workStage.ts';

const thickness = z.number().nullable();

const grainingSchema = z.object({
  at: momentSchema,
  grit: z.number().min(10).max(3000).describe('As the trade counts it, such as 80, 180, 220'),
  charges: z.int().min(0).max(1000),
  minutes: z.number().min(0).max(10_000).nullable().default(null),
  note: noteSchema,
}) satisfies z.ZodType<GrainingEntry>;

const straightedgeSchema = z.object({
  at: momentSchema,
  gapMm: z.number().min(0).max(50),
  where: z.string().max(500).default(''),
}) satisfies z.ZodType<StraightedgeReading>;

const pressSetUpSchema = z.object({
  scraperMm: z.number().positive().max(3000).nullable().default(null),
  packing: z.string().max(2000).default(''),
  pressureEighths: z.number().min(-80).max(80).nullable().default(null),
}) satisfies z.ZodType<PressSetUp>;

/** What a person writes about a stone; only name and size are asked for. Sizes in mm are judged by the use case. */
export const stoneDraftSchema = z.object({
  name: nameSchema,
  widthMm: z.number(),
  heightMm: z.number(),
  cornerThicknessMm: z
    .tuple([thickness, thickness, thickness, thickness])
    .default([null, null, null, null])
    .describe('Clockwise from the top left corner; null where not measured'),
  colour: z.string().trim().max(100).default(''),
  densityGPerCm3: z.number().min(1.5).max(3.5, 'no limestone is that dense').nullable().default(null),
  graining: z.array(grainingSchema).max(500).default([]),
  straightedge: z.array(straightedgeSchema).max(500).default([]),
  pressSetUp: pressSetUpSchema.default({ scraperMm: null, packing: '', pressureEighths: null }),
  photographs: attachedPhotographsSchema,
  note: noteSchema,
}) satisfies z.ZodType<StoneDraft>;

/** A save of a stone: what is left out stays. */
export const stoneSaveSchema = changesTo(stoneDraftSchema).extend({ version: versionSchema });

const workMentionSchema = z.object({
  id: z.string(),
  title: z.string(),
  stage: workStageSchema,
}) satisfies z.ZodType<WorkMention>;

const stoneVerdictSchema = z.object({
  level: z.enum(['level', 'not level', 'not measured']),
  wedge: z.enum(['even', 'wedge', 'not measured']),
  wedgeMm: z.number().nullable(),
  sentences: z.array(z.string()),
}) satisfies z.ZodType<StoneVerdict>;

export const keptStoneSchema = stoneDraftSchema.extend({
  ...keptFields,
}) satisfies z.ZodType<KeptStone>;

export const stoneEntrySchema = keptStoneSchema.extend({
  massKg: measuredSchema.nullable(),
  verdict: stoneVerdictSchema,
  works: z.array(workMentionSchema),
}) satisfies z.ZodType<StoneEntry>;

const stoneSummarySchema = z.object({
  id: z.string(),
  name: z.string(),
  widthMm: z.number(),
  heightMm: z.number(),
  colour: z.string(),
  putBy: z.boolean(),
  version: z.int(),
  changedAt: momentSchema,
  sample: z.boolean(),
  work: workMentionSchema.nullable().describe('The work on it that was changed last'),
  gum: gumStateSchema.nullable().describe('Whether it lies under gum; null without a work'),
}) satisfies z.ZodType<StoneSummary>;

export const stoneListSchema = z.object({ stones: z.array(stoneSummarySchema), next: nextSchema });
