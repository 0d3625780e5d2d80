import SqliteDatabase from 'better-sqlite3';

/** Tables whose rows are told again, each with the columns that hold ids: parents first. */
const copied: Readonly<Record<string, readonly string[]>> = {
  stones: ['id'],
  works: ['id', 'stone_id'],
  work_media: ['work_id'],
  batches: ['id'],
  plans: ['id', 'work_id', 'tannic_batch_id'],
  runs: ['id', 'client_id', 'work_id', 'plan_id'],
  run_events: ['run_id'],
  inks: ['id', 'work_id'],
  pulls: ['id', 'work_id', 'edition_id'],
  approvals: ['id', 'work_id', 'pull_id'],
  series_settings: ['work_id'],
  editions: ['id', 'work_id'],
  ledger_entries: ['edition_id'],
  edition_prints: ['edition_id'],
  deadlines: ['work_id'],
};

/**
 * Tells the year in a database again and again by copying its rows under ids of their own; what lies inside records stays.
 * @returns how many rows came to be
 */
export function tellAgain(file: string, count: number): number {
  const database = new SqliteDatabase(file);
  database.pragma('foreign_keys = ON');
  let rows = 0;
  database.transaction(() => {
    for (const [table, ids] of Object.entries(copied)) {
      const columns = database
        .prepare<[], { name: string }>(`SELECT name FROM pragma_table_info('${table}')`)
        .all()
        .map(({ name }) => name);
      const taken = columns.map((name) => (ids.includes(name) ? `"${name}" || @ending` : `"${name}"`));
      const named = columns.map((name) => `"${name}"`).join(', ');
      // the first telling alone is copied: its rows end with no mark
      const own = ids[0]!;
      const copy = database.prepare(
        `INSERT INTO "${table}" (${named}) SELECT ${taken.join(', ')} FROM "${table}" WHERE "${own}" NOT LIKE '%~%'`,
      );
      for (let time = 2; time <= count; time++) rows += copy.run({ ending: `~${time}` }).changes;
    }
  })();
  database.close();
  return rows;
}
