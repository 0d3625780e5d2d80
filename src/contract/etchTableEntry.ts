import { z } from 'zod';
import type { EtchTableChanges, EtchTableIssue, EtchTableSummary } from '../records/etchTableEntry.ts';
import { idSchema, momentSchema, nameSchema, versionSchema } from './common.ts';
import { etchTableSchema } from './etchTable.ts';

const summarySchema = z.object({
  id: z.string(),
  name: z.string(),
  version: z.int().describe('The newest'),
  starting: z.boolean().describe('One that every studio starts with: copied, never edited'),
  savedAt: momentSchema,
}) satisfies z.ZodType<EtchTableSummary>;

export const etchTableListSchema = z.object({ tables: z.array(summarySchema) });

export const etchTableIssueSchema = z.object({
  table: etchTableSchema,
  savedAt: momentSchema,
  starting: z.boolean(),
}) satisfies z.ZodType<EtchTableIssue>;

export const etchTableIssuesSchema = z.object({
  issues: z.array(z.object({ version: z.int(), name: z.string(), savedAt: momentSchema })),
});

/** A copy of a table, the studio's own from then on. */
export const etchTableCopySchema = z.object({
  name: nameSchema,
  from: idSchema.describe('Id of the table to copy, its newest version'),
});

/** A save of a table: it becomes the next version, the earlier ones stay. */
export const etchTableSaveSchema = etchTableSchema
  .omit({ id: true, version: true })
  .extend({ version: versionSchema });

export const etchTableChangesQuerySchema = z.object({
  from: z.coerce.number().int().min(1),
  to: z.coerce.number().int().min(1).nullable().default(null).describe('The newest unless given'),
});

export const etchTableChangesSchema = z.object({
  from: z.int(),
  to: z.int(),
  sentences: z.array(z.string()),
}) satisfies z.ZodType<EtchTableChanges>;
