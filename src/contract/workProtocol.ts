import { z } from 'zod';
import type { ExpectedTime, Spent } from '../records/bench.ts';
import type { FigureSource } from '../records/keptAt.ts';
import {
  type ForeignProtocol,
  type ProtocolComparison,
  type ProtocolEtch,
  type ProtocolMaterial,
  type ProtocolPoured,
  type ProtocolStage,
  type WorkProtocol,
  workProtocolSchemaName,
} from '../records/workProtocol.ts';
import { keptFields, momentSchema, nextSchema, noteSchema } from './common.ts';
import { lineStageSchema } from './lineStage.ts';
import { historyFactSchema } from './work.ts';

const words = z.string().max(4000);
const name = z.string().max(400);
const list = <T extends z.ZodType>(item: T) => z.array(item).max(2000);
const figure = z.number();
const perhaps = z.number().nullable();
const amount = z.number().min(0);
const strength = z.enum(['ground', 'scant', 'light', 'middle', 'dark']).nullable();
const basis = z.enum(['published', 'common practice', 'memory', 'this room', 'typed', 'measured']);
const coverage = z.object({ coverage: figure, low: figure, high: figure }).nullable();
const change = z.enum(['held', 'lost', 'lighter', 'darker', 'filled', 'scum', 'undecided']);

const spent = z
  .object({
    seconds: amount,
    low: figure,
    high: figure,
    how: z.enum(['measured', 'remembered']),
    oneClock: z.boolean(),
  })
  .nullable()
  .describe('null: not recorded') satisfies z.ZodType<Spent | null>;
const expected = z
  .object({ lowSeconds: perhaps, highSeconds: perhaps, basis, note: words })
  .nullable() satisfies z.ZodType<ExpectedTime | null>;

const material = z.object({
  name: name.describe('By what it is, never by what it is sold as'),
  ml: amount,
  drops: perhaps,
  grams: perhaps,
  mlPer100Cm2: perhaps,
  gramsPerLitre: perhaps,
  pH: perhaps,
  gum: z.boolean().nullable(),
}) satisfies z.ZodType<ProtocolMaterial>;

const etch = z.object({
  letter: name,
  name,
  medium: name.nullable(),
  mediumName: name.nullable().default(null),
  strength,
  etch: name.nullable(),
  areaCm2: amount,
  areaPlusMinusCm2: perhaps.default(null),
  mlPlusMinus: perhaps.default(null),
  parts: list(z.object({ material: name, ml: amount, drops: perhaps, mlPer100Cm2: perhaps })),
  plannedSeconds: z.object({ low: amount, wanted: perhaps, high: perhaps }).nullable(),
  moveWithinSeconds: perhaps,
  layFrom: perhaps,
  basis: words,
  done: list(
    z.object({
      stage: lineStageSchema,
      laidAt: momentSchema,
      spent,
      differenceSeconds: perhaps,
      longestGapSeconds: perhaps,
    }),
  ),
}) satisfies z.ZodType<ProtocolEtch>;

const poured = z.object({
  stage: lineStageSchema.nullable(),
  material: name,
  plannedMl: perhaps,
  amounts: list(
    z.object({
      value: amount,
      unit: z.enum(['ml', 'g']),
      low: perhaps,
      high: perhaps,
      per100Cm2: perhaps,
    }),
  ),
  alsoUnmeasured: z.boolean(),
}) satisfies z.ZodType<ProtocolPoured>;

const stage = z.object({
  stage: lineStageSchema,
  name,
  state: z.enum(['open', 'done', 'skipped']),
  startedAt: momentSchema.nullable(),
  expected,
  spent,
  differenceSeconds: perhaps,
}) satisfies z.ZodType<ProtocolStage>;

const comparison = z.object({
  title: name,
  finding: words.nullable(),
  zones: list(z.object({ name, medium: name, drawn: coverage, printed: coverage, change })),
  counts: list(z.object({ change, zones: amount })),
  warnings: list(words),
}) satisfies z.ZodType<ProtocolComparison>;

const source = z.object({
  at: name,
  from: list(
    z.object({
      record: z.enum([
        'work',
        'stone',
        'plan',
        'second-etch',
        'run',
        'batch',
        'material',
        'series',
        'approvals',
        'comparison',
        'edition',
        'ledger',
        'prints',
        'report',
      ]),
      id: name,
      field: name,
    }),
  ),
  how: z
    .enum([
      'count',
      'sum',
      '100 × first ÷ sum of the others',
      '100 × poured ÷ areas',
      'from drawn corners and sides',
    ])
    .nullable(),
}) satisfies z.ZodType<FigureSource>;

/** A protocol as it stands in its file. */
export const workProtocolSchema = z.object({
  schema: z.literal(workProtocolSchemaName),
  engine: name,
  madeAt: momentSchema,
  title: z.string().min(1).max(400),
  workId: name,
  workVersion: figure,
  stone: z.object({ name, widthMm: amount, heightMm: amount, colour: name }),
  origin: z.enum(['new', 'halfway']),
  past: list(
    z.object({
      fact: historyFactSchema,
      value: words.nullable(),
    }),
  ),
  table: z.object({ name, version: figure }).nullable(),
  people: perhaps,
  filmMm: perhaps,
  materials: list(material),
  etches: list(etch),
  poured: list(poured).default([]),
  secondEtches: list(
    z.object({
      line: z.enum(['full', 'quick']),
      zones: list(z.object({ name, strength, etch: name.nullable(), why: words })),
    }),
  ),
  stages: list(stage),
  picked: list(z.object({ tool: z.enum(['roller', 'ink', 'batch', 'press', 'cloth', 'paper']), words })),
  deviations: list(words),
  comparisons: list(comparison),
  series: z
    .object({
      state: z.enum(['steady', 'not-yet', 'growing', 'fading', 'cannot-tell']),
      reason: words,
      tolerance: figure,
      sigma: perhaps,
      pulls: amount,
    })
    .nullable(),
  notRecorded: list(words),
  sources: z.array(source).max(50_000),
}) satisfies z.ZodType<WorkProtocol>;

/** What is kept of another studio's protocol. */
export const foreignProtocolSchema = z.object({
  ...keptFields,
  protocol: workProtocolSchema,
  note: noteSchema,
}) satisfies z.ZodType<ForeignProtocol>;

export const foreignProtocolListSchema = z.object({
  protocols: z.array(foreignProtocolSchema),
  next: nextSchema,
});
