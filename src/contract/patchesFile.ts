import { z } from 'zod';
import type { SeenRuler, StonePatch, TestFactor } from '../records/testStone.ts';
import { factorSchema, gridSchema, patchSchema, rulerSchema, treatmentSchema } from './testStone.ts';

/** What patches.json holds once it is read. */
export interface PatchesFile {
  readonly name: string;
  readonly grid: z.infer<typeof gridSchema> | null;
  readonly strips: 'rows' | 'columns' | null;
  readonly rows: readonly Readonly<Record<string, string>>[];
  readonly columns: readonly Readonly<Record<string, string>>[];
  readonly factors: readonly TestFactor[] | null;
  readonly ruler: SeenRuler | null;
  /** Whole patches where there is no grid; else what differs from the grid, by id. */
  readonly patches: readonly (Pick<StonePatch, 'id'> & Partial<StonePatch>)[];
}

const whole = patchSchema.shape;

/** patches.json: a grid with what its rows and columns got, patches one by one, or a grid of which some patches differ. */
export const patchesFileSchema = z
  .object({
    name: z.string().trim().min(1).max(200).default('Test stone'),
    grid: gridSchema.nullable().default(null),
    strips: z.enum(['rows', 'columns']).nullable().default(null),
    rows: z.array(treatmentSchema).max(100).default([]),
    columns: z.array(treatmentSchema).max(100).default([]),
    ruler: rulerSchema.nullable().default(null),
    factors: z.array(factorSchema).max(12).nullable().default(null),
    patches: z
      .array(
        z.object({
          id: whole.id,
          square: whole.square.optional(),
          strip: whole.strip.unwrap().optional(),
          row: whole.row.unwrap().optional(),
          column: whole.column.unwrap().optional(),
          polygonMm: whole.polygonMm.optional(),
          intention: whole.intention.unwrap().optional(),
          treatment: treatmentSchema.optional(),
          note: whole.note.unwrap().optional(),
        }),
      )
      .max(2000)
      .default([]),
  })
  .superRefine(({ grid, rows, columns, patches }, context) => {
    const wrong = (path: (string | number)[], message: string) =>
      context.addIssue({ code: 'custom', path, message });
    if (grid === null) {
      if (patches.length === 0) wrong(['patches'], 'there is neither a grid nor a patch');
      patches.forEach(({ polygonMm }, index) => {
        if (!polygonMm)
          wrong(['patches', index, 'polygonMm'], 'without a grid every patch needs its outline');
      });
      return;
    }
    if (rows.length > grid.rows) wrong(['rows'], `there are more than the grid's ${grid.rows} rows`);
    if (columns.length > grid.columns)
      wrong(['columns'], `there are more than the grid's ${grid.columns} columns`);
  }) as unknown as z.ZodType<PatchesFile>;
