import type { EditedTable } from './recordTables.ts';

export interface KitTable extends EditedTable {
  readonly tool: string;
}
