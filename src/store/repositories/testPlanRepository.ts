import type { Kysely } from 'kysely';
import type { TestPlan } from '../../records/testPlan.ts';
import type { Tables } from '../database/tables.ts';
import type { TestPlanTable } from '../database/testStoneTables.ts';
import { type EntryPage, type EntryRows, entryRowsIn } from './entryRows.ts';
import type { PageQuery } from './pageMark.ts';

export interface TestPlanQuery extends PageQuery {
  /** Whether test stones were made of it. */
  readonly made: 'no' | 'yes' | 'all';
}

export interface TestPlanRepository extends Omit<EntryRows<TestPlan>, 'list'> {
  /** Newest first; null where `after` can't be read. */
  list(query: TestPlanQuery): Promise<EntryPage<TestPlan> | null>;
}

const madeColumn = { no: 0, yes: 1, all: null } as const;

/** The planned tests' rows of an open database or of a transaction. */
export function testPlanRepositoryIn(database: Kysely<Tables>): TestPlanRepository {
  const rows = entryRowsIn<TestPlan, Pick<TestPlanTable, 'made'>>(
    database,
    'test_plans',
    ({ title, treatments }) => [title, ...treatments.flatMap(({ name, levels }) => [name, ...levels])],
    ({ testStones }) => ({ made: testStones.length > 0 ? 1 : 0 }),
  );
  return { ...rows, list: ({ made, ...query }) => rows.list(query, { made: madeColumn[made] }) };
}
