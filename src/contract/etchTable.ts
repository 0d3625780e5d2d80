import { z } from 'zod';
import type { EtchTable } from '../records/etch.ts';

const seconds = z.number().int().min(0).max(86_400);

const recipe = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('parts'),
    parts: z
      .array(z.object({ material: z.string().min(1).max(200), parts: z.number().positive().max(1000) }))
      .min(1),
  }),
  z.object({
    kind: z.literal('drops'),
    acid: z.string().min(1).max(200),
    into: z.string().min(1).max(200),
    dropsPer30Ml: z
      .object({ low: z.number().min(0).max(600), high: z.number().min(0).max(600) })
      .refine(({ low, high }) => low <= high, { message: 'the most drops are fewer than the least' }),
  }),
]);

const contact = z
  .object({ low: seconds, wanted: seconds.nullable(), high: seconds.nullable() })
  .refine(({ low, high }) => high === null || low <= high, {
    message: 'the most contact is less than the least',
  })
  .refine(
    ({ low, wanted, high }) => wanted === null || (wanted >= low && (high === null || wanted <= high)),
    {
      message: 'the wanted contact lies outside least and most',
    },
  );

const row = z.object({
  strength: z.enum(['ground', 'scant', 'light', 'middle', 'dark']),
  name: z.string().min(1).max(200),
  recipe,
  contactSeconds: contact,
  moveWithinSeconds: seconds.min(1),
  basis: z.object({
    basis: z.enum(['published', 'common practice', 'memory', 'this room', 'typed', 'measured']),
    note: z.string().min(1).max(2000),
  }),
  advice: z.array(z.object({ source: z.string().min(1), advice: z.string().min(1) })).optional(),
  choice: z.string().optional(),
});

/** An etch table as a file or a request holds it: most is never less than least, no strength twice. */
export const etchTableSchema = z.object({
  id: z.string().min(1).max(100),
  name: z.string().min(1).max(200),
  version: z.number().int().min(1),
  rows: z
    .array(row)
    .min(1)
    .refine((rows) => new Set(rows.map((each) => each.strength)).size === rows.length, {
      message: 'two rows are for the same strength',
    }),
}) satisfies z.ZodType<EtchTable>;
