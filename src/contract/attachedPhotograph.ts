import { z } from 'zod';
import type { AttachedPhotograph } from '../records/attachedPhotograph.ts';
import { momentSchema, noteSchema } from './common.ts';
import { photographIdSchema } from './photograph.ts';
import { cornersSchema } from './point.ts';

const attachedPhotographSchema = z.object({
  photograph: photographIdSchema,
  state: z.enum(['grained', 'drawn', 'washed-out', 'inked', 'print', 'level', 'set-up', 'other']),
  takenAt: momentSchema.nullable().default(null),
  corners: z
    .object({ of: z.enum(['stone', 'rectangle']), px: cornersSchema })
    .nullable()
    .default(null)
    .describe('Where the stone or the work rectangle lies on it, px: TL, TR, BR, BL'),
  note: noteSchema,
}) satisfies z.ZodType<AttachedPhotograph>;

/** Photographs of a stone or a work, by state. */
export const attachedPhotographsSchema = z.array(attachedPhotographSchema).max(200).default([]);
