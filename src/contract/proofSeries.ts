import { z } from 'zod';
import { type SeriesQuestion, seriesTones } from '../records/proofSeries.ts';

/** Noise takes a bare sheet a little below 0 and a solid a little above 1; more is a percentage or a slip. */
const slack = 0.05;
const outOfRange = 'a darkness lies between 0 and 1';
const darkness = z
  .number()
  .min(-slack, outOfRange)
  .max(1 + slack, outOfRange)
  .nullable()
  .default(null);

const pullSchema = z.object({
  n: z.int('the number of a pull is a whole number').min(1).max(100_000),
  paper: z.string('the name of a paper is missing').trim().min(1, 'the name of a paper is missing').max(200),
  age: z
    .union([z.number().min(0).max(1e7), z.string().trim().min(1).max(200)])
    .nullable()
    .default(null)
    .describe('Minutes since the pull when it was read, or a word for its state; null: not recorded'),
  lights: darkness,
  middles: darkness,
  darks: darkness,
  faults: z.array(z.string().trim().min(1).max(500)).max(50).default([]),
});

/** A series of pulls as a file or a request holds it; whatever else a pull records is passed over. */
export const proofSeriesSchema = z.object({
  noise: z.object({ tone: z.number().positive().max(1) }).describe('σ of one reading, set up and read again'),
  tolerance: z.number().positive().max(1).default(0.04),
  pulls: z
    .array(pullSchema)
    .max(1000)
    .superRefine((pulls, context) => {
      const seen = new Set<number>();
      for (const [i, pull] of pulls.entries()) {
        if (seen.has(pull.n))
          context.addIssue({ code: 'custom', path: [i, 'n'], message: `pull ${pull.n} is given twice` });
        seen.add(pull.n);
        if (seriesTones.every((tone) => pull[tone] === null))
          context.addIssue({
            code: 'custom',
            path: [i],
            message: `pull ${pull.n} has neither lights, middles nor darks`,
          });
      }
    }),
}) satisfies z.ZodType<SeriesQuestion>;
