import { z } from 'zod';
import { type ComparisonRecord, comparisonSchema } from '../records/comparison.ts';
import { type EvidenceRecord, evidenceSchema } from '../records/evidence.ts';
import {
  causes,
  type FeatureName,
  type FeatureReading,
  type Features,
  featureNames,
  type KeptOutcome,
  logFeatures,
  type RoomCounts,
  type TestOutcome,
} from '../records/suspects.ts';

const readingSchema = z
  .union([
    z.number().transform((value): FeatureReading => ({ value, deviation: 0, note: null })),
    z.object({
      value: z.number(),
      deviation: z.number().min(0).default(0),
      note: z.string().max(500).nullable().default(null),
    }),
  ])
  .nullable();

function featuresOf(names: readonly FeatureName[]): z.ZodType<Features> {
  return z.strictObject(
    Object.fromEntries(names.map((name) => [name, readingSchema.optional()])),
    'there is no feature of that name',
  ) as unknown as z.ZodType<Features>;
}

/** Features by name: a number, or `{value, deviation, note}`; null or left out: not known. */
export const featuresSchema = featuresOf(featureNames);
const logSchema = featuresOf(logFeatures);

/** What came of a separating test. */
export const testOutcomeSchema = z.object({
  test: z.string().min(1).max(100),
  outcome: z.enum(['yes', 'no']),
}) satisfies z.ZodType<TestOutcome>;

/** An outcome to be kept: of a test, or the cause that was found in the end. */
export const keptOutcomeSchema = z.union([
  testOutcomeSchema,
  z.object({ found: z.enum([...causes, 'something-else']) }),
]) satisfies z.ZodType<KeptOutcome>;

const reasonSchema = z.object({
  what: z.string(),
  words: z.string(),
  see: z.string().nullable(),
  weight: z.number(),
});

/** Suspects as they are answered. */
export const suspectsAnswerSchema = z.object({
  basis: z.literal('common practice'),
  suspects: z.array(
    z.object({
      suspect: z.enum([...causes, 'something-else']),
      name: z.string(),
      evidence: z.enum(['strong', 'some', 'none', 'against']),
      weight: z.number(),
      chance: z.object({ value: z.number(), basis: z.string() }).nullable(),
      supporting: z.array(reasonSchema),
      opposing: z.array(reasonSchema),
    }),
  ),
  tests: z.array(
    z.object({
      test: z.string(),
      words: z.string(),
      minutes: z.number(),
      outcomes: z.array(z.object({ outcome: z.string(), words: z.string() })),
      bits: z.number(),
      bitsPerMinute: z.number(),
      separates: z.array(z.enum(causes)),
    }),
  ),
  done: z.array(
    z.object({
      test: z.string(),
      words: z.string(),
      minutes: z.number(),
      outcomes: z.array(z.object({ outcome: z.string(), words: z.string() })),
      outcome: z.string(),
    }),
  ),
  photograph: z.object({ question: z.string(), doubt: z.string() }),
  seen: z.array(z.object({ feature: z.enum(featureNames), words: z.string(), see: z.string().nullable() })),
  unknown: z.array(z.enum(featureNames)),
  warnings: z.array(z.string()),
  roomCases: z.int(),
  found: z
    .enum([...causes, 'something-else'])
    .nullable()
    .describe('The cause that was kept as found'),
});

/** Suspects behind a work's newest pull. */
export const pullSuspectsSchema = z.object({
  pull: z.object({ id: z.string(), number: z.int() }),
  before: z.int().nullable(),
  run: z.string().nullable(),
  answer: suspectsAnswerSchema,
});

const roomSchema = z.object({
  closed: z.int().min(0),
  byCause: z.partialRecord(z.enum([...causes, 'something-else']), z.int().min(0)),
}) satisfies z.ZodType<RoomCounts>;

const cell = z.number().nullable();

/** evidence.json, as it lies beside a comparison's record. */
export const evidenceRecordSchema = z
  .object({
    schema: z.literal(evidenceSchema),
    engine: z.string(),
    travel: z.enum(['down', 'across']),
    features: featuresSchema,
    cells: z.object({
      columns: z.int().min(1),
      rows: z.int().min(1),
      cellMm: z.number().positive(),
      drawn: z.array(cell),
      printed: z.array(cell),
    }),
  })
  .refine(
    ({ cells }) => [cells.drawn, cells.printed].every((plane) => plane.length === cells.columns * cells.rows),
    {
      message: 'it has not as many cells as columns times rows',
      path: ['cells'],
    },
  ) satisfies z.ZodType<EvidenceRecord>;

/** A comparison's record: it was checked where it was made; here only what is read of it. */
export const comparedRecordSchema = z.looseObject({
  schema: z.literal(comparisonSchema),
  verdict: z.enum(['ok', 'unmirrored', 'no-match']),
  zones: z.array(z.looseObject({ id: z.string() })),
  warnings: z.array(z.looseObject({ code: z.string() })),
  strength: z.looseObject({}),
  evidence: evidenceRecordSchema.optional(),
}) as unknown as z.ZodType<ComparisonRecord & { readonly evidence?: EvidenceRecord | undefined }>;

/** The question of `stonetone suspects`: features, or comparisons, earliest first: records, or folders that `stonetone compare` wrote. */
export const suspectsQuestionSchema = z
  .object({
    features: featuresSchema.optional(),
    comparisons: z
      .array(z.union([z.string().min(1), comparedRecordSchema]))
      .min(1)
      .max(100)
      .optional(),
    log: logSchema.optional(),
    outcomes: z.array(testOutcomeSchema).max(100).default([]),
    room: roomSchema.nullable().default(null),
  })
  .refine(({ features, comparisons }) => features !== undefined || comparisons !== undefined, {
    message: 'give features or comparisons',
  });
