import { type Kysely, type Selectable, sql } from 'kysely';
import type { KitDraft, KitEntry, KitTool, LastPick } from '../../records/kit.ts';
import type { RunTool } from '../../records/run.ts';
import type { KitTable } from '../database/kitTables.ts';
import type { RunEventTable } from '../database/runTables.ts';
import type { Tables } from '../database/tables.ts';
import { archivedShown, type PageQuery, pageOf, readMark } from './pageMark.ts';
import { foldForSearch, searchWords } from './searchText.ts';

export interface KitQuery extends PageQuery {
  /** null: of any tool. */
  readonly tool: KitTool | null;
}

export interface KitPage {
  readonly kit: readonly KitEntry[];
  readonly next: string | null;
}

export interface KitRepository {
  add(entry: KitEntry): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<KitEntry | null>;
  /** Newest first; null where `after` can't be read. */
  list(query: KitQuery): Promise<KitPage | null>;
  /** Puts an entry in place of its version `from`; false, and nothing changed, where it is at another. */
  save(entry: KitEntry, from: number): Promise<boolean>;
  /** The newest pick of every tool that was ever picked in a run and not taken back. */
  lastPicks(): Promise<readonly LastPick[]>;
}

const tools: readonly RunTool[] = ['roller', 'ink', 'batch', 'press', 'cloth', 'paper'];

function toRow({ id, archived, version, createdAt, changedAt, sample, ...draft }: KitEntry): KitTable {
  const words = Object.values(draft).filter((value) => typeof value === 'string');
  return {
    id,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    archived: archived ? 1 : 0,
    sample: sample ? 1 : 0,
    search_text: foldForSearch(words.join(' ')),
    tool: draft.tool,
    record_json: JSON.stringify(draft),
  };
}

function fromRow(row: Selectable<KitTable>): KitEntry {
  return {
    ...(JSON.parse(row.record_json) as KitDraft),
    id: row.id,
    archived: row.archived === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** The kit's rows of an open database or of a transaction. */
export function kitRepositoryIn(database: Kysely<Tables>): KitRepository {
  return {
    async add(entry) {
      await database.insertInto('kit').values(toRow(entry)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('kit').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list({ search, archived, tool, after, limit }) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let query = database
        .selectFrom('kit')
        .selectAll()
        .where('archived', 'in', archivedShown(archived))
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit + 1);
      if (tool !== null) query = query.where('tool', '=', tool);
      for (const word of searchWords(search))
        query = query.where(sql<boolean>`instr(search_text, ${word}) > 0`);
      if (mark) {
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('created_at', 'id'), '<', tuple(mark.key, mark.id)),
        );
      }
      const cut = pageOf(await query.execute(), limit, (row) => ({ key: row.created_at, id: row.id }));
      return { kit: cut.page.map(fromRow), next: cut.next };
    },
    async save(entry, from) {
      const outcome = await database
        .updateTable('kit')
        .set(toRow(entry))
        .where('id', '=', entry.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
    async lastPicks() {
      const undos = undosIn(database);
      const picks: LastPick[] = [];
      for (const tool of tools) {
        const row = await newestPick(database, tool, undos);
        if (!row) continue;
        const { id, words } = JSON.parse(row.payload_json) as Partial<LastPick>;
        const { run_id: runId, received_at: receivedAt } = row;
        picks.push({ tool, id: id ?? null, words: words ?? '', runId, receivedAt });
      }
      return picks;
    },
  };
}

type PickRow = Pick<
  Selectable<RunEventTable>,
  'run_id' | 'sequence' | 'client_id' | 'received_at' | 'payload_json'
>;

/** The newest pick of a tool that still counts; most often the first that is looked at. */
async function newestPick(
  database: Kysely<Tables>,
  tool: RunTool,
  undos: (runId: string) => Promise<readonly Undo[]>,
): Promise<PickRow | null> {
  for (let offset = 0; ; offset += 1) {
    const row = await database
      .selectFrom('run_events')
      .select(['run_id', 'sequence', 'client_id', 'received_at', 'payload_json'])
      // written out, as the index over picks asks for it
      .where('kind', '=', sql.lit('picked'))
      .where(sql`json_extract(payload_json, '$.tool')`, '=', tool)
      .orderBy('received_at', 'desc')
      .orderBy('sequence', 'desc')
      .limit(1)
      .offset(offset)
      .executeTakeFirst();
    if (!row) return null;
    if (!takenBack({ id: row.client_id, sequence: row.sequence }, await undos(row.run_id))) return row;
  }
}

interface Undo {
  readonly id: string;
  readonly sequence: number;
  /** Client id of what it takes back. */
  readonly of: string;
}

/** The undos of a run, each run read once. */
function undosIn(database: Kysely<Tables>): (runId: string) => Promise<readonly Undo[]> {
  const read = new Map<string, Promise<readonly Undo[]>>();
  const undosOf = async (runId: string) => {
    const rows = await database
      .selectFrom('run_events')
      .select(['client_id as id', 'sequence', sql<string>`json_extract(payload_json, '$.clientId')`.as('of')])
      .where('run_id', '=', runId)
      .where('kind', '=', 'undo')
      .execute();
    return rows;
  };
  return (runId) => {
    const found = read.get(runId) ?? undosOf(runId);
    read.set(runId, found);
    return found;
  };
}

/** Whether a later undo, which itself was not taken back, takes an event back. */
function takenBack({ id, sequence }: Pick<Undo, 'id' | 'sequence'>, undos: readonly Undo[]): boolean {
  return undos.some((undo) => undo.of === id && undo.sequence > sequence && !takenBack(undo, undos));
}
