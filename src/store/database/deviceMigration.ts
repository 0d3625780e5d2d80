/** Phones and tablets that were let in. They stay for good, and one that was shut out is never let in again. */
export const deviceMigration: readonly string[] = [
  `CREATE TABLE devices (
      id TEXT PRIMARY KEY,
      name TEXT NOT NULL UNIQUE COLLATE NOCASE,
      token_seal TEXT NOT NULL UNIQUE,
      paired_at TEXT NOT NULL,
      last_seen_at TEXT NOT NULL,
      revoked_at TEXT
    ) STRICT`,
  `CREATE TRIGGER devices_never_go BEFORE DELETE ON devices
    BEGIN SELECT RAISE(ABORT, 'a device is never removed'); END`,
  `CREATE TRIGGER devices_stay_shut_out BEFORE UPDATE ON devices
    WHEN OLD.revoked_at IS NOT NULL AND NEW.revoked_at IS NOT OLD.revoked_at
    BEGIN SELECT RAISE(ABORT, 'a device that was shut out stays so'); END`,
];
