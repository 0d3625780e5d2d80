import type { EditedTable } from './recordTables.ts';

/** Which photographs a test stone stands on; keeps a photograph from vanishing under it. */
interface TestStonePhotographTable {
  readonly test_stone_id: string;
  readonly photograph_id: string;
}

/** Corrections and blind readings; rows are added, and the database refuses to change or remove one. */
export interface TestStoneEventTable {
  readonly test_stone_id: string;
  /** From 1, without gaps, within a test stone. */
  readonly sequence: number;
  readonly client_id: string;
  readonly kind: string;
  readonly at: string;
  readonly actor: string;
  readonly payload_json: string;
}

/** Planned tests. */
export interface TestPlanTable extends EditedTable {
  /** 1 once test stones were made of it. */
  readonly made: number;
}

export interface TestStoneTables {
  readonly test_plans: TestPlanTable;
  readonly test_stones: EditedTable;
  readonly test_stone_photographs: TestStonePhotographTable;
  readonly test_stone_events: TestStoneEventTable;
}
