import { z } from 'zod';
import type { Measured } from '../foundation/measured.ts';

/** A number with the bounds of its 95 % interval and where it comes from. */
export const measuredSchema = z.object({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  basis: z.enum(['published', 'common practice', 'memory', 'this room', 'typed', 'measured']),
  warnings: z.array(z.string()),
}) satisfies z.ZodType<Measured>;
