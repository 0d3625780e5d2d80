import { type Kysely, type Selectable, sql } from 'kysely';
import type { KitEntry, KitTool, LastInHand } from '../../records/kit.ts';
import type { RunTool } from '../../records/run.ts';
import type { KitTable } from '../database/kitTables.ts';
import type { RunEventTable } from '../database/runTables.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';
import type { PageQuery } from './pageMark.ts';

export interface KitQuery extends PageQuery {
  /** null: of any tool. */
  readonly tool: KitTool | null;
}

export interface KitPage {
  readonly kit: readonly KitEntry[];
  readonly next: string | null;
}

export interface KitRepository extends Omit<EntryRows<KitEntry>, 'list'> {
  /** Newest first; null where `after` can't be read. */
  list(query: KitQuery): Promise<KitPage | null>;
  /** The newest pick of every tool that was ever picked in a run and not taken back. */
  lastInHand(): Promise<readonly LastInHand[]>;
}

const tools: readonly RunTool[] = ['roller', 'ink', 'batch', 'press', 'cloth', 'paper'];

/** Every text that a person wrote of it. */
function wordsOf(entry: KitEntry): readonly string[] {
  const { id, putBy, version, createdAt, changedAt, sample, ...draft } = entry;
  return Object.values(draft).filter((value) => typeof value === 'string');
}

/** The kit's rows of an open database or of a transaction. */
export function kitRepositoryIn(database: Kysely<Tables>): KitRepository {
  const rows = entryRowsIn<KitEntry, Pick<KitTable, 'tool'>>(database, 'kit', wordsOf, ({ tool }) => ({
    tool,
  }));
  return {
    ...rows,
    async list({ tool, ...query }) {
      const found = await rows.list(query, { tool });
      return found && { kit: found.page, next: found.next };
    },
    async lastInHand() {
      const undos = undosIn(database);
      const picks: LastInHand[] = [];
      for (const tool of tools) {
        const row = await newestPick(database, tool, undos);
        if (!row) continue;
        const { id, words } = JSON.parse(row.payload_json) as Partial<LastInHand>;
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
