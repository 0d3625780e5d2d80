import type { EditedTable } from './recordTables.ts';

/** Mixes of ink. */
export interface InkTable extends EditedTable {
  /** The work that it was made for; null for none in particular. */
  readonly work_id: string | null;
  /** What the prints said of it; null: nothing yet. */
  readonly verdict: string | null;
}
