import type { Kysely } from 'kysely';
import type { KeptOutcome, RoomCounts, Suspect } from '../../records/suspects.ts';
import type { Tables } from '../database/tables.ts';

/** An outcome with its place and time. */
export interface StoredOutcome {
  readonly id: string;
  readonly comparisonId: string;
  readonly at: string;
  readonly outcome: KeptOutcome;
}

export interface SuspectRepository {
  add(outcome: StoredOutcome): Promise<void>;
  /** All of a comparison, in the order in which they came. */
  of(comparisonId: string): Promise<readonly StoredOutcome[]>;
  /** What the room found so far: of every comparison the cause that was found last. */
  counts(): Promise<RoomCounts>;
}

/** The outcomes' rows of an open database. */
export function suspectRepositoryIn(database: Kysely<Tables>): SuspectRepository {
  return {
    async add({ id, comparisonId, at, outcome }) {
      const told =
        'found' in outcome
          ? { test: null, outcome: null, found: outcome.found }
          : { test: outcome.test, outcome: outcome.outcome, found: null };
      await database
        .insertInto('suspect_outcomes')
        .values({ id, comparison_id: comparisonId, at, ...told })
        .execute();
    },
    async of(comparisonId) {
      const rows = await database
        .selectFrom('suspect_outcomes')
        .selectAll()
        .where('comparison_id', '=', comparisonId)
        .orderBy('at')
        .orderBy('id')
        .execute();
      return rows.map(({ id, at, test, outcome, found }) => ({
        id,
        comparisonId,
        at,
        outcome: found === null ? { test: test!, outcome: outcome! } : { found: found as Suspect },
      }));
    },
    async counts() {
      const rows = await database
        .selectFrom('suspect_outcomes')
        .select(['comparison_id', 'found'])
        .where('found', 'is not', null)
        .orderBy('at')
        .orderBy('id')
        .execute();
      const last = new Map(rows.map((row) => [row.comparison_id, row.found as Suspect]));
      const byCause: Partial<Record<Suspect, number>> = {};
      for (const suspect of last.values()) byCause[suspect] = (byCause[suspect] ?? 0) + 1;
      return { closed: last.size, byCause };
    },
  };
}
