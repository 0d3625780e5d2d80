import type { Kysely } from 'kysely';
import type { Tables } from '../database/tables.ts';

export interface SettingRepository {
  read(name: string): Promise<string | null>;
  write(name: string, value: string): Promise<void>;
}

/** What the program remembers about the data folder itself. */
export function settingRepositoryIn(database: Kysely<Tables>): SettingRepository {
  return {
    async read(name) {
      const row = await database
        .selectFrom('settings')
        .select('value')
        .where('name', '=', name)
        .executeTakeFirst();
      return row?.value ?? null;
    },
    async write(name, value) {
      await database
        .insertInto('settings')
        .values({ name, value })
        .onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
        .execute();
    },
  };
}
