import { z } from 'zod';
import {
  type CuratedPrint,
  type Edition,
  type EditionDraft,
  type EditionPaper,
  printKinds,
} from '../records/edition.ts';
import type { EditionQuestion } from '../records/editionPlan.ts';
import type { LedgerEntryInput } from '../records/ledger.ts';
import {
  changesTo,
  daySchema,
  idSchema,
  keptFields,
  momentSchema,
  nameSchema,
  noteSchema,
  versionSchema,
} from './common.ts';

const side = z.number().positive().max(5000);
const sheetSchema = z.tuple([side, side]).describe('Width and height, mm');
const words = z.string().max(2000).default('');

const paperFields = z.object({
  name: z.string().trim().max(200).default(''),
  sheetMm: sheetSchema.nullable().default(null).describe('The parent sheet; null: not known'),
  sheetGrain: z.enum(['long', 'short', 'unknown']).default('unknown'),
  pieceMm: sheetSchema.nullable().default(null).describe('What is printed; null: the sheet whole'),
  pieceGrain: z.enum(['long', 'short', 'any']).default('any'),
  tearLossMm: z.number().min(0).max(100).default(0).describe('Strip that every tear costs, mm'),
  gramsPerM2: z.number().positive().max(2000).nullable().default(null),
  damped: z.enum(['yes', 'no', 'unknown']).default('unknown'),
}) satisfies z.ZodType<EditionPaper>;
const noPaper = paperFields.parse({});

const darkness = z.number().min(-0.2).max(1.2).nullable().default(null);
const toneFields = { lights: darkness, middles: darkness, darks: darkness };
const toneSchema = z.object(toneFields);

const planned = {
  size: z.int().min(1).max(1000).describe('Signed and numbered prints asked for'),
  artistProofs: z.int().min(0).max(200).nullable().default(null).describe('null: one in ten, at least one'),
  paper: paperFields.default(noPaper),
  inkedCm2: z.number().positive().max(1e6).nullable().default(null),
  rackPlaces: z.int().min(0).max(10_000).nullable().default(null),
};

const draft = z.object({
  title: nameSchema,
  ...planned,
  artist: words,
  printer: words,
  ink: words,
  press: words,
  drawingMaterials: words,
  etches: words,
  approvalPullId: idSchema.nullable().default(null),
  approval: toneSchema
    .default({ lights: null, middles: null, darks: null })
    .describe('Darkness of the approval proof'),
  approvedBy: words,
  chop: words,
  signature: words,
  signedOn: daySchema.nullable().default(null),
  cancellation: words,
  cancelledOn: daySchema.nullable().default(null),
  note: noteSchema,
});

/** What a person writes about an edition. */
export const editionDraftSchema = draft satisfies z.ZodType<EditionDraft>;

/** A save of an edition: what is left out stays. */
export const editionSaveSchema = changesTo(draft).extend({ version: versionSchema });

const printSchema = z.object({
  impression: idSchema.describe("Client id of the impression's entry in the ledger"),
  kind: z.enum(printKinds),
  number: z.int().min(1).max(1000).nullable().default(null),
}) satisfies z.ZodType<CuratedPrint>;

/** The prints of an edition whole, in place of those before. */
export const printsSaveSchema = z.object({ version: versionSchema, prints: z.array(printSchema).max(2000) });

export const editionSchema = draft.extend({
  ...keptFields,
  workId: z.string(),
  prints: z.array(printSchema),
}) satisfies z.ZodType<Edition>;

export const editionListSchema = z.object({ editions: z.array(editionSchema) });

/** A planning question of its own, with what the room's ledgers say where that is known. */
export const editionQuestionSchema = z.object({
  ...planned,
  past: z
    .object({
      impressions: z.int().min(0),
      spoiled: z.int().min(0),
      intervalsMinutes: z.array(z.number().positive()).max(100_000).default([]),
    })
    .refine(({ impressions, spoiled }) => spoiled <= impressions, {
      message: 'more spoiled than printed',
      path: ['spoiled'],
    })
    .default({ impressions: 0, spoiled: 0, intervalsMinutes: [] }),
}) satisfies z.ZodType<EditionQuestion>;

const clientIdSchema = z
  .string()
  .min(1)
  .max(100)
  .describe('Chosen by who sends it: sent again, it is the same one');
const envelope = {
  clientId: clientIdSchema,
  at: momentSchema.describe("When it happened, by the device's own clock"),
  sentAt: momentSchema.nullable().default(null),
  actor: z.string().trim().min(1).max(100).nullable().default(null),
  device: z.string().min(1).max(100).nullable().default(null).describe('Which clock `at` was read from'),
};
const entry = <Kind extends string, Payload extends z.ZodType>(kind: Kind, payload: Payload) =>
  z.object({ ...envelope, kind: z.literal(kind), payload });
const verdict = z.enum(['good', 'second', 'torn']);
const said = z.string().max(2000).optional();
const maybeWords = z.object({ words: said }).default({});
const age = z.number().min(0).max(1e7).nullable().default(null).describe('Minutes since it was pulled');
const photograph = idSchema.nullish().describe('A photograph that is kept here');

/** What a device logs at the press; by its kind, what the payload must say. */
export const ledgerEntryInputSchema = z.discriminatedUnion('kind', [
  entry('impression', z.object({ verdict, reason: said, photograph })),
  entry('reading', z.object({ impression: clientIdSchema, ...toneFields, ageMinutes: age, photograph })),
  entry(
    'photographed',
    z.object({
      impression: clientIdSchema,
      photograph: idSchema,
      takenAt: momentSchema.nullable().default(null),
      ageMinutes: age,
    }),
  ),
  entry('checked', z.object({ impression: clientIdSchema, verdict, reason: said, ageMinutes: age })),
  entry('charged', maybeWords),
  entry('paused', z.object({ gummed: z.boolean(), words: said })),
  entry('resumed', maybeWords),
  entry('note', z.object({ words: z.string().min(1).max(2000) })),
  entry('undo', z.object({ clientId: clientIdSchema })),
]) satisfies z.ZodType<LedgerEntryInput>;

export const ledgerEntrySchema = z.object({
  sequence: z.int().describe('1 for the first of an edition'),
  ...envelope,
  kind: z.string(),
  receivedAt: momentSchema,
  payload: z.unknown(),
});

export const ledgerSchema = z.object({ entries: z.array(ledgerEntrySchema) });
