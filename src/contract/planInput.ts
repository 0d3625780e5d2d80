import { z } from 'zod';
import { etchTableSchema } from './etchTable.ts';

const millimetres = z.number().finite();
const point = z.tuple([millimetres, millimetres]);
const share = z.number().min(0).max(1);

const zone = z.object({
  id: z.string().min(1).max(100),
  name: z.string().min(1).max(200),
  medium: z.string().min(1).max(100),
  deposit: z.enum(['light', 'middle', 'dark', 'solid', 'wash']).optional(),
  intention: z.enum(['drawn', 'guide', 'stop-out', 'scraped-white']).optional(),
  polygonMm: z.array(point).min(3).max(2000).readonly(),
  tone: z.object({ mean: share, darkest: share }).optional(),
});

/** The work that an etch plan is made for, as `stonetone plan` reads it. `table` may also be a path: the caller resolves it. */
export const planInputSchema = z.object({
  title: z.string().trim().min(1).max(200).optional(),
  stone: z.object({
    widthMm: millimetres.positive(),
    heightMm: millimetres.positive(),
    thicknessMm: millimetres.positive(),
    colour: z.string().max(100),
  }),
  zones: z.array(zone).max(500),
  table: z.union([z.string().min(1), etchTableSchema]),
  tannic: z
    .object({
      gramsPerLitre: z
        .number()
        .positive()
        .max(1000)
        .nullish()
        .transform((value) => value ?? null),
      pH: z
        .number()
        .min(0)
        .max(14)
        .nullish()
        .transform((value) => value ?? null),
      gum: z
        .boolean()
        .nullish()
        .transform((value) => value ?? null),
    })
    .nullish()
    .transform((value) => value ?? null),
  people: z.union([z.literal(1), z.literal(2)]).default(1),
  filmMm: z.number().min(0.1).max(3).default(0.5),
  stages: z
    .union([z.literal(1), z.literal(2)])
    .default(1)
    .describe('2: the strongest etch is laid after all weaker ones are lifted'),
  gapFilmMm: z
    .number()
    .min(0.1)
    .max(3)
    .nullable()
    .default(null)
    .describe(
      'The depth for which the gaps of the table hold; a deeper film may lie untouched longer in proportion',
    ),
  layMm2PerSecond: z.number().min(50).max(20_000).default(1500),
  guardMm: z.number().min(0).max(200).default(5),
});

export type PlanInput = z.infer<typeof planInputSchema>;
