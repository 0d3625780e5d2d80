import type { Kysely } from 'kysely';
import type { TestStone } from '../../records/testStone.ts';
import type { TestStoneEvent } from '../../records/testStoneEvent.ts';
import type { Tables } from '../database/tables.ts';
import type { TestStoneEventTable } from '../database/testStoneTables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';

export interface TestStoneRepository extends EntryRows<TestStone> {
  /** The event that a client id stands for at a test stone. */
  eventOf(testStoneId: string, clientId: string): Promise<TestStoneEvent | null>;
  addEvent(testStoneId: string, event: TestStoneEvent): Promise<void>;
  /** All of them in order. */
  events(testStoneId: string): Promise<readonly TestStoneEvent[]>;
}

/** The test stones' rows of an open database or of a transaction. Events are added and never changed. */
export function testStoneRepositoryIn(database: Kysely<Tables>): TestStoneRepository {
  const rows = entryRowsIn<TestStone>(database, 'test_stones', ({ name, note, factors, patches }) => [
    name,
    note,
    ...factors.map((factor) => factor.name),
    ...new Set(patches.flatMap(({ treatment }) => Object.values(treatment))),
  ]);
  return {
    ...rows,
    async add(stone) {
      await rows.add(stone);
      await attach(database, stone);
    },
    async save(stone, from) {
      const saved = await rows.save(stone, from);
      if (saved) await attach(database, stone);
      return saved;
    },
    async eventOf(testStoneId, clientId) {
      const row = await database
        .selectFrom('test_stone_events')
        .selectAll()
        .where('test_stone_id', '=', testStoneId)
        .where('client_id', '=', clientId)
        .executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async addEvent(testStoneId, { sequence, clientId, kind, at, actor, payload }) {
      await database
        .insertInto('test_stone_events')
        .values({
          test_stone_id: testStoneId,
          sequence,
          client_id: clientId,
          kind,
          at,
          actor,
          payload_json: JSON.stringify(payload),
        })
        .execute();
    },
    async events(testStoneId) {
      const kept = await database
        .selectFrom('test_stone_events')
        .selectAll()
        .where('test_stone_id', '=', testStoneId)
        .orderBy('sequence')
        .execute();
      return kept.map(fromRow);
    },
  };
}

async function attach(database: Kysely<Tables>, { id, drawn, prints }: TestStone): Promise<void> {
  await database.deleteFrom('test_stone_photographs').where('test_stone_id', '=', id).execute();
  const shown = [...(drawn ? [drawn] : []), ...prints];
  const ids = new Set(shown.flatMap(({ photograph, repeat, flat }) => [photograph, repeat, flat]));
  ids.delete(null);
  if (ids.size === 0) return;
  const rows = [...ids].map((photograph) => ({ test_stone_id: id, photograph_id: photograph! }));
  await database.insertInto('test_stone_photographs').values(rows).execute();
}

function fromRow(row: TestStoneEventTable): TestStoneEvent {
  return {
    sequence: row.sequence,
    clientId: row.client_id,
    kind: row.kind,
    at: row.at,
    actor: row.actor,
    payload: JSON.parse(row.payload_json),
  } as TestStoneEvent;
}
