import { z } from 'zod';
import type { MixtureQuestion } from '../records/mixture.ts';

const positive = z.number().positive().max(1e6);
const amount = z.number().min(0).max(1e6);
const percent = z.number().min(0).max(100);

/** A mixing question as a file or a request holds it. */
export const mixtureSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('parts'),
    parts: z.array(z.object({ material: z.string().min(1).max(200), parts: positive })).min(1),
    totalMl: positive,
  }),
  z.object({ kind: z.literal('dilution'), stock: positive, wanted: positive, wantedMl: positive }),
  z.object({
    kind: z.literal('weighed-dilution'),
    stock: z.object({ percent, gramsPerMl: positive }),
    wanted: z.object({ percent, gramsPerMl: positive, ml: positive }),
  }),
  z.object({
    kind: z.literal('alligation'),
    weakPercent: percent,
    strongPercent: percent,
    wantedPercent: percent,
  }),
  z.object({
    kind: z.literal('dropper'),
    drops: z.number().int().min(1).max(10_000),
    grams: positive,
    gramsPerMl: positive,
    balanceStepGrams: amount,
  }),
  z.object({
    kind: z.literal('drops'),
    drops: z.number().int().min(1).max(10_000),
    dropsPerMl: positive,
    acidMolarity: positive,
    gumMl: amount,
  }),
  z.object({
    kind: z.literal('baume'),
    baume: amount,
    modulus: positive.optional(),
    liquid: z.enum(['nitric', 'other']).optional(),
  }),
  z.object({
    kind: z.literal('strength'),
    acid: z.enum(['nitric', 'phosphoric']),
    percent,
    gramsPerMl: positive.optional(),
  }),
  z.object({
    kind: z.literal('pH'),
    acids: z
      .array(z.object({ id: z.string().min(1), molar: amount }))
      .min(1)
      .max(20),
    gum: z.object({ gramsPerLitre: positive, pH: z.number().min(0).max(14) }).optional(),
  }),
  z.object({ kind: z.literal('limestone'), protonsMmol: positive, areaCm2: positive }),
]) satisfies z.ZodType<MixtureQuestion>;
