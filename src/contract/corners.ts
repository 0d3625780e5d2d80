import { z } from 'zod';
import type { Corners } from '../science/geometry/point.ts';
import { cornersSchema } from './point.ts';

/** Where the work rectangle seems to lie on a photograph. */
export const cornerSuggestionSchema: z.ZodType<{
  readonly corners: Corners | null;
  readonly confidence: number;
  readonly kind: string;
}> = z.object({
  corners: cornersSchema.nullable().describe('TL, TR, BR, BL in px; null: none found'),
  confidence: z.number().min(0).max(1),
  kind: z.string().describe('What was taken for the rectangle'),
});
