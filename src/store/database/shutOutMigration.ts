/** A device is let in and shut out, as screens say it. SQLite carries the names into the trigger. */
export const shutOutMigration: readonly string[] = [
  `ALTER TABLE devices RENAME COLUMN paired_at TO let_in_at`,
  `ALTER TABLE devices RENAME COLUMN revoked_at TO shut_out_at`,
];
