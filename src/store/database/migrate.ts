import { type Kysely, sql } from 'kysely';
import { migrations } from './migrations.ts';
import type { Tables } from './tables.ts';

/** The version that this program writes. */
export const currentVersion = migrations.length;

/** The version of an open database: 0 for an empty one. */
export async function databaseVersion(database: Kysely<Tables>): Promise<number> {
  const { rows } = await sql<{ user_version: number }>`PRAGMA user_version`.execute(database);
  return rows[0]!.user_version;
}

/**
 * Brings a database to `target` (the current version unless given), one transaction per version, so that a
 * program killed half way leaves a whole earlier version. A database that is already there is left alone.
 */
export async function migrate(database: Kysely<Tables>, target: number = currentVersion): Promise<void> {
  for (let version = await databaseVersion(database); version < target; version += 1) {
    await database.transaction().execute(async (transaction) => {
      for (const statement of migrations[version]!) await sql.raw(statement).execute(transaction);
      await sql.raw(`PRAGMA user_version = ${version + 1}`).execute(transaction);
    });
  }
}
