import { z } from 'zod';
import type { EditionStart } from '../records/editionStart.ts';
import { measuredSchema } from './measured.ts';

const starting = <Value extends z.ZodType>(value: Value) =>
  z.object({ value, from: z.string().describe('What it was taken from') }).nullable();
const darkness = z.number().nullable();

/** What an edition may start from. */
export const editionStartSchema = z.object({
  pull: z.object({ id: z.string(), number: z.int() }).nullable().describe('Good to print; null: none is'),
  paperName: starting(z.string()),
  gramsPerM2: starting(z.number()),
  damped: starting(z.enum(['yes', 'no'])),
  ink: starting(z.string()),
  inkedCm2: starting(measuredSchema),
  approvedBy: starting(z.string()),
  approval: starting(z.object({ lights: darkness, middles: darkness, darks: darkness })),
}) satisfies z.ZodType<EditionStart>;
