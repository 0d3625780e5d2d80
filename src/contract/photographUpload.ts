import { z } from 'zod';
import type { PhotographUpload, UploadStart } from '../records/photographUpload.ts';
import { photographIdSchema } from './photograph.ts';

const sha256Schema = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'not a SHA-256 in hexadecimal')
  .describe('SHA-256 of the whole file as it is sent, hexadecimal');

/** Id of an upload: 64 hexadecimal digits. */
export const uploadIdSchema = z.string().regex(/^[0-9a-f]{64}$/, 'not an upload id');

export const uploadStartSchema = z.object({
  fileName: z.string().max(1000).describe('Only its last part is kept, and it never becomes a path'),
  byteCount: z.int().positive().describe('Of the whole file, bytes'),
  sha256: sha256Schema,
}) satisfies z.ZodType<UploadStart>;

export const photographUploadSchema = uploadStartSchema.extend({
  id: uploadIdSchema,
  receivedBytes: z.int().min(0).describe('How many bytes from the first on are on the disk here'),
  photograph: photographIdSchema.nullable().describe('What it has become; null until it is whole'),
  startedAt: z.string().describe('ISO 8601 with zone'),
  endsAt: z.string().describe('When what is there of it is let go, ISO 8601 with zone'),
}) satisfies z.ZodType<PhotographUpload>;
