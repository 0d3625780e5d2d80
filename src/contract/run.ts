import { z } from 'zod';
import type { PouredTold, RunEventInput, RunInput, RunSummary } from '../records/run.ts';
import { idSchema, momentSchema } from './common.ts';
import { correctionSchema, lineStageSchema } from './lineStage.ts';

/** More than a note holds, and little enough that every screen can hear of it. */
const mostPayload = 20_000;
const clientIdSchema = z
  .string()
  .min(1)
  .max(200)
  .describe('Chosen by who sends it: sent again, it is the same one');

/** The furthest that a moment can lie from 1970, ms. */
const furthestMs = 8.64e15;

/** A moment, ISO 8601 with zone; programs may also give milliseconds since 1970 (UTC). */
const tappedSchema = z.preprocess(
  (given) =>
    typeof given === 'number' && Math.abs(given) <= furthestMs ? new Date(given).toISOString() : given,
  momentSchema,
);

export const runInputSchema = z.object({
  workId: idSchema,
  planId: idSchema.nullable().default(null).describe("The work's newest unless given"),
  clientId: clientIdSchema.nullable().default(null),
}) satisfies z.ZodType<RunInput>;

const words = z.string().max(2000);
const placeSchema = idSchema.describe("A zone's id, or that of a split wash's part");
const touch = z.object({ place: placeSchema });
const atStage = z.object({ stage: lineStageSchema, words: words.optional() });
const maybeWords = z.object({ words: words.optional() });

/** More of one material than one pouring holds. */
const mostPoured = 100_000;
const pouredSchema = z
  .object({
    material: z.string().trim().min(1).max(200).describe('By what it is, as plans name it'),
    how: z.enum(['measured', 'as planned', 'remembered', 'not measured']),
    amount: z
      .object({ value: z.number().min(0).max(mostPoured), unit: z.enum(['ml', 'g']) })
      .nullable()
      .describe('null, and only then `not measured`: used, but nobody measured how much'),
    mark: z
      .number()
      .positive()
      .max(mostPoured)
      .nullish()
      .describe('Smallest mark of the vessel or scale that it was read on'),
    stage: lineStageSchema.nullish().describe('The stage under way unless given'),
    batchId: idSchema.nullish(),
    materialId: idSchema.nullish().describe('Its entry in the hazard register'),
    words: words.optional(),
  })
  .refine(({ how, amount }) => (how === 'not measured') === (amount === null), {
    message: 'an amount belongs to all but what was not measured',
    path: ['amount'],
  }) satisfies z.ZodType<PouredTold>;

const envelope = {
  clientId: clientIdSchema,
  at: tappedSchema.describe("When it happened, by the device's own clock"),
  sentAt: tappedSchema.nullable().default(null).describe('When it is sent, by the same clock'),
  actor: z.string().trim().min(1).max(100).nullable().default(null),
  device: z.string().min(1).max(100).nullable().default(null).describe('Which clock `at` was read from'),
};
const event = <Kind extends string, Payload extends z.ZodType>(kind: Kind, payload: Payload) =>
  z.object({ ...envelope, kind: z.literal(kind), payload });

/** What a device sends; by its kind, what the payload must say. A note may say anything. */
export const runEventInputSchema = z.discriminatedUnion('kind', [
  event('laid', touch),
  event('moved', touch),
  event('lifted', touch),
  event(
    'buffed',
    z.object({ place: placeSchema.nullish(), round: z.int().min(1).max(20).optional() }).default({}),
  ),
  event('trouble', z.object({ place: placeSchema.nullish(), words })),
  event('stage-started', atStage),
  event('stage-ended', atStage),
  event('skipped', atStage),
  event('repeated', atStage),
  event(
    'correction',
    z.object({ stage: correctionSchema, place: placeSchema.nullish(), words: words.optional() }),
  ),
  event('gummed', maybeWords.default({})),
  event('gum-off', maybeWords.default({})),
  event(
    'picked',
    z.object({
      tool: z.enum(['roller', 'ink', 'batch', 'press', 'cloth', 'paper']),
      id: idSchema.nullish(),
      words,
    }),
  ),
  event(
    'remembered',
    z.object({
      stage: lineStageSchema.nullish(),
      place: placeSchema.nullish(),
      seconds: z.number().min(0).max(3.2e7),
      words: words.optional(),
    }),
  ),
  event('poured', pouredSchema),
  event('left', z.object({ done: z.array(words).max(100) })),
  event('undo', z.object({ clientId: clientIdSchema })),
  event(
    'note',
    z
      .unknown()
      .optional()
      .refine((said) => (JSON.stringify(said) ?? '').length <= mostPayload, {
        message: `longer than ${mostPayload} characters`,
      })
      .transform((said) => said ?? {}),
  ),
]) satisfies z.ZodType<RunEventInput>;

export const runEventSchema = z.object({
  sequence: z.int().describe('1 for the first of a run'),
  ...envelope,
  kind: z.string(),
  receivedAt: momentSchema.describe("When it was kept, by the server's clock"),
  payload: z.unknown(),
});

export const runSummarySchema = z.object({
  id: z.string(),
  workId: z.string(),
  planId: z.string().nullable().describe('The plan that is followed'),
  workVersion: z.int(),
  startedAt: momentSchema,
  events: z.int().describe('How many it holds'),
}) satisfies z.ZodType<RunSummary>;

export const runListSchema = z.object({ runs: z.array(runSummarySchema) });

export const runEventQuerySchema = z.object({
  after: z.coerce.number().int().min(0).default(0).describe('Only events with a higher sequence number'),
  limit: z.coerce.number().int().min(1).nullable().default(null).describe('All unless given'),
});
