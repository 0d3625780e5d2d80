import { z } from 'zod';
import type { LiftAnswer, RoomAnswer, VapourAnswer } from '../records/roomAnswer.ts';
import type { RoomQuestion } from '../records/roomQuestion.ts';
import { liftQuestionSchema } from './lift.ts';

const airChangesPerHour = z.number().positive().max(1000);

/** A washout's vapour as a file or a request holds it. */
export const vapourQuestionSchema = z.object({
  kind: z.literal('vapour'),
  ml: z.number().positive().max(100_000),
  gramsPerMl: z.number().min(0.3).max(3).nullable().default(null),
  roomM3: z.number().positive().max(100_000),
  airChangesPerHour,
  limitMgPerM3: z.number().positive().max(100_000).describe('Typed from the safety data sheet'),
  flashPointC: z.number().min(-100).max(400).nullable().default(null),
  airC: z.number().min(-30).max(120).nullable().default(null),
});

/** A question about the room's air or a lift. */
export const roomQuestionSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('air'),
    airChangesPerHour,
    removal: z.number().gt(0).lt(1).describe('Share that is to go'),
  }),
  z.object({
    kind: z.literal('settle'),
    micron: z.number().min(0.2).max(1000).describe('Diameter of a grain'),
    gramsPerCm3: z.number().positive().max(25),
    metres: z.number().positive().max(100).describe('How far it falls'),
  }),
  vapourQuestionSchema,
  liftQuestionSchema,
]) satisfies z.ZodType<RoomQuestion>;

const range = z.object({ low: z.number(), high: z.number(), reason: z.string() });
const common = {
  value: z.number(),
  range,
  formula: z.string(),
  source: z.string(),
  words: z.array(z.string()),
};

/** What is answered: a figure, how far it may be off, and what comes before it. */
export const roomAnswerSchema = z.discriminatedUnion('kind', [
  z.object({ ...common, kind: z.literal('air'), unit: z.literal('min') }),
  z.object({ ...common, kind: z.literal('settle'), unit: z.literal('min') }),
  z.object({
    ...common,
    kind: z.literal('vapour'),
    unit: z.literal('mg/m³'),
    timesLimit: z.number(),
    clearing: z.object({ low: z.number(), high: z.number() }),
  }),
  z.object({
    ...common,
    kind: z.literal('lift'),
    unit: z.literal('kg'),
    multipliers: z.object({
      horizontal: z.number(),
      vertical: z.number(),
      distance: z.number(),
      asymmetry: z.number(),
      frequency: z.number(),
      coupling: z.number(),
    }),
    index: z
      .object({ value: z.number().nullable(), low: z.number().nullable(), high: z.number().nullable() })
      .nullable(),
  }),
]) satisfies z.ZodType<RoomAnswer | VapourAnswer | LiftAnswer>;
