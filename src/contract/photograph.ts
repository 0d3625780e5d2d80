import { z } from 'zod';
import type { PhotographEntry } from '../records/comparisonEntry.ts';

/** Id of a photograph: SHA-256 of its kept bytes, hexadecimal. */
export const photographIdSchema = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'not a photograph id')
  .describe('SHA-256 of the photograph after place data was removed, hexadecimal');

export const photographEntrySchema = z.object({
  id: photographIdSchema,
  fileName: z.string(),
  widthPx: z.int().positive(),
  heightPx: z.int().positive(),
  addedAt: z.string().describe('ISO 8601 with zone'),
}) satisfies z.ZodType<PhotographEntry>;
