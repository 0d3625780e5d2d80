import { z } from 'zod';
import type { MixtureAnswer } from '../records/mixture.ts';

/** What a mixing question is answered with. */
export const mixtureAnswerSchema = z.object({
  kind: z.enum([
    'parts',
    'dilution',
    'weighed-dilution',
    'alligation',
    'dropper',
    'drops',
    'baume',
    'strength',
    'pH',
    'limestone',
  ]),
  figures: z.array(
    z.object({
      name: z.string(),
      value: z.number(),
      unit: z.string(),
      low: z.number().nullable(),
      high: z.number().nullable(),
    }),
  ),
  formula: z.string(),
  source: z.string(),
  cautions: z.array(z.string()),
}) satisfies z.ZodType<MixtureAnswer>;
