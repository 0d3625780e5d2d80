import { z } from 'zod';
import type { KnownHolds } from '../records/knownHolds.ts';

const share = z.number().min(0).max(1);
const count = z.int().min(0);

const hold = z.object({
  etch: z.string(),
  share: z.object({
    value: share,
    low: share,
    high: share,
    exactLow: share,
    exactHigh: share,
    least: share,
    most: share,
    unit: z.enum(['stone', 'strip', 'square', 'patch']),
    units: count,
    unitsHeld: count,
    patches: count,
    patchesHeld: count,
    counted: z.number().min(0),
  }),
  verdict: z.enum(['holds', 'holds-here', 'fails', 'fails-here', 'open']),
  certainty: z.enum(['sure', 'some', 'little']),
  counts: z.object({ lost: count, weak: count, held: count, filled: count }),
  testStones: count,
  works: count,
  pooled: share,
  pooledLow: share,
  pooledHigh: share,
});

/** What the room knows of media and etches. */
export const knownHoldsSchema = z.object({
  schema: z.literal('stonetone/known-holds/1'),
  etches: z.array(z.string()),
  media: z.array(
    z.object({
      medium: z.string(),
      holds: z.array(hold),
      advice: z
        .object({
          table: z.string(),
          row: z.string(),
          basis: z.string(),
          sources: z.array(z.object({ source: z.string(), advice: z.string() })),
          choice: z.string().nullable(),
        })
        .nullable(),
      found: z.string(),
    }),
  ),
  stones: count,
  alike: z.object({ value: share, origin: z.enum(['estimated', 'assumed']) }),
  pooledBy: z.string(),
}) satisfies z.ZodType<KnownHolds>;
