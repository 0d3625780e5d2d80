import { z } from 'zod';
import { type BlindSitting, holds, type TestStoneReading } from '../records/patchReading.ts';
import {
  type PatchGrid,
  patchIntentions,
  type SeenRuler,
  type StonePatch,
  type TestFactor,
  type TestPhotograph,
  type TestPrint,
  type TestStone,
  type TestStoneDraft,
} from '../records/testStone.ts';
import type { TestStoneAnswer } from '../records/testStoneAnswer.ts';
import type { TestStoneEventInput } from '../records/testStoneEvent.ts';
import {
  changesTo,
  daySchema,
  idSchema,
  keptFields,
  momentSchema,
  nameSchema,
  nextSchema,
  noteSchema,
  versionSchema,
} from './common.ts';
import { photographIdSchema } from './photograph.ts';
import { cornersSchema, pointSchema } from './point.ts';

const word = z.string().trim().min(1).max(60);
const mm = z.number().positive().max(3000);
const pair = (side: z.ZodNumber) => z.tuple([side, side]);

/** A grid of squares. */
export const gridSchema = z.object({
  rows: z.int().min(1).max(100),
  columns: z.int().min(1).max(100),
  originMm: pointSchema.describe('Top left corner of the top left square, from the rectangle’s top left'),
  squareMm: pair(mm),
  gutterMm: pair(z.number().min(0).max(1000)),
  turnDegrees: z.number().min(-45).max(45).default(0),
  steps: z.int().min(1).max(12).default(1).describe('Deposit steps side by side in every square'),
}) satisfies z.ZodType<PatchGrid>;

/** Something that was varied. */
export const factorSchema = z.object({
  name: word,
  givenTo: z
    .enum(['patch', 'strip', 'stone'])
    .default('patch')
    .describe('To what it was given at once: what counts as a replicate'),
}) satisfies z.ZodType<TestFactor>;

/** What a patch got, by factor. */
export const treatmentSchema = z.record(word, z.string().trim().min(1).max(120));

/** One patch, as in patches.json too. */
export const patchSchema = z.object({
  id: word,
  square: word,
  strip: word.nullable().default(null),
  row: z.int().min(1).nullable().default(null),
  column: z.int().min(1).nullable().default(null),
  polygonMm: z.array(pointSchema).min(3).max(500),
  intention: z.enum(patchIntentions).default('image'),
  treatment: treatmentSchema.default({}).describe('By factor; a factor that is left out is not known'),
  note: z.string().max(2000).default(''),
}) satisfies z.ZodType<StonePatch>;

const photographSchema = z.object({
  photograph: photographIdSchema,
  corners: cornersSchema
    .nullable()
    .default(null)
    .describe('px: the rectangle’s TL, TR, BR, BL; null: to be found'),
  repeat: photographIdSchema.nullable().default(null),
  flat: photographIdSchema.nullable().default(null),
}) satisfies z.ZodType<TestPhotograph>;

const printSchema = photographSchema.extend({
  id: idSchema,
  name: nameSchema,
  comparisonId: idSchema.nullable().default(null),
}) satisfies z.ZodType<TestPrint>;

/** A ruler seen on the stone's photograph. */
export const rulerSchema = z.object({
  fromPx: pointSchema,
  toPx: pointSchema,
  lengthMm: mm.describe('How far apart the two marks are on the ruler'),
}) satisfies z.ZodType<SeenRuler>;

const unlike =
  <Item>(of: (item: Item) => string) =>
  (items: readonly Item[]) =>
    new Set(items.map(of)).size === items.length;

const draft = z.object({
  name: nameSchema,
  stoneId: idSchema.nullable().default(null),
  workId: idSchema.nullable().default(null),
  drawnOn: daySchema.nullable().default(null),
  sizeMm: pair(mm.min(20)).describe('What the four corners enclose'),
  grid: gridSchema.nullable().default(null),
  factors: z
    .array(factorSchema)
    .max(12)
    .refine(
      unlike<TestFactor>(({ name }) => name),
      'two factors have one name',
    )
    .default([]),
  patches: z.array(patchSchema).max(2000).default([]),
  drawn: photographSchema.nullable().default(null).describe('The drawn stone'),
  ruler: rulerSchema.nullable().default(null).describe('A ruler seen on that photograph'),
  prints: z
    .array(printSchema)
    .max(50)
    .refine(
      unlike<TestPrint>(({ id }) => id),
      'two prints have one id',
    )
    .default([]),
  judgedBy: idSchema
    .nullable()
    .default(null)
    .describe('Print whose findings are the stone’s; null: the last read'),
  note: noteSchema,
});

/** What a person writes of a test stone. */
export const testStoneDraftSchema = draft satisfies z.ZodType<TestStoneDraft>;

/** A save of a test stone: what is left out stays. */
export const testStoneSaveSchema = changesTo(draft).extend({ version: versionSchema });

export const testStoneSchema = draft.extend({
  ...keptFields,
}) satisfies z.ZodType<TestStone>;

export const testStoneListSchema = z.object({ testStones: z.array(testStoneSchema), next: nextSchema });

const hold = z.enum(holds).nullable();
const envelope = {
  clientId: idSchema.describe('Chosen by who sends it: sent again, it is the same one'),
  actor: z.string().trim().min(1, 'say whose hand or eye it was').max(100),
};
const event = <Kind extends string, Payload extends z.ZodType>(kind: Kind, payload: Payload) =>
  z.object({ ...envelope, kind: z.literal(kind), payload });

/** What is logged beside a reading. */
export const testStoneEventInputSchema = z.discriminatedUnion('kind', [
  event(
    'corrected',
    z.object({
      print: idSchema,
      patch: word,
      hold: hold.describe('null: not to be read'),
      why: z.string().trim().min(1, 'say why').max(1000),
    }),
  ),
  event('sitting-begun', z.object({ print: idSchema, seed: z.int().min(0).max(4_294_967_295) })),
  event('list-opened', z.object({ why: z.string().trim().min(1, 'say why').max(1000) })),
  event('seen', z.object({ sitting: idSchema, patch: word, hold: hold.describe('null: could not tell') })),
]) satisfies z.ZodType<TestStoneEventInput>;

export const testStoneEventSchema = z.object({
  sequence: z.int(),
  ...envelope,
  at: momentSchema,
  kind: z.string(),
  payload: z.unknown(),
});
export const testStoneEventsSchema = z.object({ events: z.array(testStoneEventSchema) });

const answerSchema = z.object({ patch: z.string(), hold, at: momentSchema });
export const blindSittingsSchema: z.ZodType<{ readonly sittings: readonly BlindSitting[] }> = z.object({
  sittings: z.array(
    z.object({
      id: z.string(),
      print: z.string(),
      reader: z.string(),
      seed: z.int(),
      startedAt: momentSchema,
      order: z.array(z.string()),
      answers: z.array(answerSchema),
    }),
  ),
});

/** A reading only passes through; `src/records/patchReading.ts` says what it holds. */
export const testStoneReadingSchema = z
  .custom<TestStoneReading>((value) => typeof value === 'object' && value !== null)
  .describe('TestStoneReading');

/** An answer only passes through; `src/records/testStoneAnswer.ts` says what it holds. */
export const testStoneAnswerSchema = z
  .custom<TestStoneAnswer>((value) => typeof value === 'object' && value !== null)
  .describe('TestStoneAnswer');
