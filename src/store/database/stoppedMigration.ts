const states = `('waiting', 'measuring', 'measured', 'refused', 'not-done', 'stopped')`;

/** `failed` is `not-done` and `cancelled` is `stopped`, as screens say it: the column that names the states is made anew. */
function statesAnew(table: string): readonly string[] {
  return [
    `DROP INDEX ${table}_queued`,
    `ALTER TABLE ${table} ADD COLUMN new_state TEXT NOT NULL DEFAULT 'waiting' CHECK (new_state IN ${states})`,
    `UPDATE ${table} SET new_state =
      CASE state WHEN 'failed' THEN 'not-done' WHEN 'cancelled' THEN 'stopped' ELSE state END`,
    `ALTER TABLE ${table} DROP COLUMN state`,
    `ALTER TABLE ${table} RENAME COLUMN new_state TO state`,
    `CREATE INDEX ${table}_queued ON ${table} (queued_at) WHERE state IN ('waiting', 'measuring')`,
  ];
}

export const stoppedMigration: readonly string[] = [
  ...statesAnew('comparisons'),
  ...statesAnew('pull_measurings'),
];
