import { z } from 'zod';
import type { ZoneTones, ZoneTonesRequest } from '../records/zoneTones.ts';
import { photographIdSchema } from './photograph.ts';
import { cornersSchema } from './point.ts';
import { workZoneSchema } from './work.ts';

/** What the tones of a work's zones are read from. */
export const zoneTonesRequestSchema = z.object({
  photograph: photographIdSchema.describe('Attached to the work or to its stone'),
  cornersPx: cornersSchema
    .nullable()
    .default(null)
    .describe('TL, TR, BR, BL of the rectangle on the photograph, px; as attached unless given'),
  of: z
    .enum(['stone', 'rectangle'])
    .nullable()
    .default(null)
    .describe(
      'What the corners enclose: the work rectangle where there is one, else the stone, unless given',
    ),
}) satisfies z.ZodType<ZoneTonesRequest>;

const share = z.number().min(0).max(1);

export const zoneTonesSchema = z.object({
  photograph: photographIdSchema,
  workVersion: z.int().describe('The version of the work whose zones were read'),
  solid: z
    .object({ darkness: share, low: z.number(), high: z.number() })
    .nullable()
    .describe('Darkness of a full film, from the darkest connected places'),
  zones: z.array(
    z.object({
      zone: z.string(),
      tone: workZoneSchema.shape.tone.describe('As a zone may carry it once a person accepts'),
      mean: z.object({ low: share, high: share }).nullable().describe('95 % interval of the mean'),
      why: z.string().nullable().describe('Why there is none'),
    }),
  ),
  warnings: z.array(z.string()),
}) satisfies z.ZodType<ZoneTones>;
