import type { Kysely } from 'kysely';
import type { KeptOutcome, RoomCounts, Suspect } from '../../records/suspects.ts';
import type { SuspectOutcomeTable } from '../database/suspectTables.ts';
import type { Tables } from '../database/tables.ts';

/** What an outcome was told of. */
export type OutcomeOf = { readonly comparisonId: string } | { readonly pullId: string };

/** An outcome with its place and time. */
export type StoredOutcome = OutcomeOf & {
  readonly id: string;
  readonly at: string;
  readonly outcome: KeptOutcome;
};

export interface SuspectRepository {
  add(outcome: StoredOutcome): Promise<void>;
  /** All of a comparison or a pull, in the order in which they came. */
  of(of: OutcomeOf): Promise<readonly KeptOutcome[]>;
  /** What the room found so far: of every comparison and every pull the cause that was found last. */
  counts(): Promise<RoomCounts>;
}

/** The outcomes' rows of an open database. */
export function suspectRepositoryIn(database: Kysely<Tables>): SuspectRepository {
  return {
    async add({ id, at, outcome, ...of }) {
      const told =
        'found' in outcome
          ? { test: null, outcome: null, found: outcome.found }
          : { test: outcome.test, outcome: outcome.outcome, found: null };
      const row = { id, at, ...told };
      if ('pullId' in of)
        await database
          .insertInto('pull_suspect_outcomes')
          .values({ ...row, pull_id: of.pullId })
          .execute();
      else
        await database
          .insertInto('suspect_outcomes')
          .values({ ...row, comparison_id: of.comparisonId })
          .execute();
    },
    async of(of) {
      const rows =
        'pullId' in of
          ? await database
              .selectFrom('pull_suspect_outcomes')
              .select(['test', 'outcome', 'found'])
              .where('pull_id', '=', of.pullId)
              .orderBy('at')
              .orderBy('id')
              .execute()
          : await database
              .selectFrom('suspect_outcomes')
              .select(['test', 'outcome', 'found'])
              .where('comparison_id', '=', of.comparisonId)
              .orderBy('at')
              .orderBy('id')
              .execute();
      return rows.map(outcomeOf);
    },
    async counts() {
      const ofComparisons = await database
        .selectFrom('suspect_outcomes')
        .select(['comparison_id as case', 'found'])
        .where('found', 'is not', null)
        .orderBy('at')
        .orderBy('id')
        .execute();
      const ofPulls = await database
        .selectFrom('pull_suspect_outcomes')
        .select(['pull_id as case', 'found'])
        .where('found', 'is not', null)
        .orderBy('at')
        .orderBy('id')
        .execute();
      const last = [ofComparisons, ofPulls].flatMap((rows) => [
        ...new Map(rows.map((row) => [row.case, row.found as Suspect])).values(),
      ]);
      const byCause: Partial<Record<Suspect, number>> = {};
      for (const found of last) byCause[found] = (byCause[found] ?? 0) + 1;
      return { closed: last.length, byCause };
    },
  };
}

function outcomeOf({
  test,
  outcome,
  found,
}: Pick<SuspectOutcomeTable, 'test' | 'outcome' | 'found'>): KeptOutcome {
  return found === null ? { test: test!, outcome: outcome! } : { found: found as Suspect };
}
