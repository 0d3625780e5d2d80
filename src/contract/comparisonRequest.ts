import { z } from 'zod';
import type { ComparisonRequest, ComparisonSide } from '../records/comparisonEntry.ts';
import { chipsSchema } from './chips.ts';
import { photographIdSchema } from './photograph.ts';
import { cornersSchema, pointSchema } from './point.ts';
import { zonesSchema } from './zones.ts';

const comparisonSideSchema = z.object({
  photograph: photographIdSchema,
  corners: cornersSchema
    .nullable()
    .default(null)
    .describe(
      'On the stone TL, TR, BR, BL of the work rectangle in px; on the print where those came to lie',
    ),
  repeat: photographIdSchema
    .nullable()
    .default(null)
    .describe('The same object set up and photographed again'),
  flat: photographIdSchema.nullable().default(null).describe('A blank white sheet under the same light'),
}) satisfies z.ZodType<ComparisonSide>;

/** What a person sends to have a print compared with its stone. */
export const comparisonRequestSchema = z.object({
  title: z.string().trim().min(1, 'a title is needed').max(200),
  sizeMm: pointSchema.describe('Width and height of the work rectangle, mm'),
  stone: comparisonSideSchema,
  proof: comparisonSideSchema,
  zones: zonesSchema.default([]),
  chips: chipsSchema.default([]),
  cornersInOrder: z
    .boolean()
    .optional()
    .describe(
      'true: the order of the print’s corners is beyond doubt, no other turn or mirroring is looked for',
    ),
}) satisfies z.ZodType<ComparisonRequest>;
