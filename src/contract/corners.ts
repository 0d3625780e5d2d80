import { z } from 'zod';
import type { Corners } from '../science/geometry/point.ts';
import { cornersSchema } from './point.ts';

/** Where the work rectangle seems to lie on a photograph. */
export const cornerSuggestionSchema: z.ZodType<{
  readonly corners: Corners | null;
  readonly letter: boolean;
  readonly sure: number;
  readonly kind: string;
}> = z.object({
  corners: cornersSchema
    .nullable()
    .describe('px, clockwise as seen, from the mark with the F or else from the top left; null: none found'),
  letter: z.boolean().describe('Whether they begin at a mark with the F'),
  sure: z.number().min(0).max(1),
  kind: z.string().describe('What was taken for the rectangle'),
});
