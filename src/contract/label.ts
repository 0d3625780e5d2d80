import { z } from 'zod';
import { paperSchema } from './paper.ts';
import { sheetWords } from './sheetWords.ts';

const ids = z
  .string()
  .max(10_000)
  .default('')
  .transform((text) => text.split(',').filter((id) => id !== ''))
  .describe('Ids parted by commas');

/** What labels are wanted for. */
export const labelQuerySchema = z.object({
  stones: ids,
  batches: ids,
  editions: ids,
  prints: ids.describe(
    'Impressions by their client ids; of an edition none of whose is named, all curated prints',
  ),
  paper: paperSchema.default('a4'),
  ...sheetWords,
});
