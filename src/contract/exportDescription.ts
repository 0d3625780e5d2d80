import { z } from 'zod';
import type { ExportDescription } from '../records/exportDescription.ts';

/** What an export holds, column by column. */
export const exportDescriptionSchema = z.object({
  kinds: z.array(
    z.object({
      name: z.string().describe('Its files are name.csv and name.json'),
      words: z.string(),
      columns: z.array(z.object({ name: z.string(), unit: z.string(), words: z.string() })),
    }),
  ),
}) satisfies z.ZodType<ExportDescription>;
