import type { Kysely } from 'kysely';
import type { Approval, KeptSeriesSettings, SeriesSettings } from '../../records/workSeries.ts';
import type { Tables } from '../database/tables.ts';

/** Good to print as it is kept; what rests on it is worked out when it is asked for. */
export type StoredApproval = Omit<Approval, 'restsOnIt'>;

export interface SeriesRepository {
  /** null where nothing was settled for that work. */
  settings(workId: string): Promise<KeptSeriesSettings | null>;
  /** Puts settings in place of version `from` (0: none yet); false, and nothing changed, where it is at another. */
  saveSettings(settings: KeptSeriesSettings, from: number): Promise<boolean>;
  /** What was typed last for σ of the room; version 0 where nothing was. */
  typedNoise(): Promise<{ readonly version: number; readonly typed: number | null }>;
  /** Adds what was typed as the version after `from`; false where there is one already. */
  saveTypedNoise(typed: number | null, from: number, at: string): Promise<boolean>;
  addApproval(approval: StoredApproval): Promise<void>;
  /** false where it was withdrawn before, or there is none. */
  withdraw(id: string, withdrawn: NonNullable<Approval['withdrawn']>): Promise<boolean>;
  /** A work's approvals, newest first, withdrawn ones too. */
  approvals(workId: string): Promise<readonly StoredApproval[]>;
}

/** What is settled for series, in an open database or a transaction. */
export function seriesRepositoryIn(database: Kysely<Tables>): SeriesRepository {
  const newestNoise = () =>
    database
      .selectFrom('room_noise')
      .select(['version', 'typed'])
      .orderBy('version', 'desc')
      .limit(1)
      .executeTakeFirst();
  return {
    async settings(workId) {
      const row = await database
        .selectFrom('series_settings')
        .selectAll()
        .where('work_id', '=', workId)
        .executeTakeFirst();
      if (!row) return null;
      const settings = JSON.parse(row.record_json) as SeriesSettings;
      return { ...settings, workId, version: row.version, changedAt: row.changed_at };
    },
    async saveSettings({ workId, version, changedAt, ...settings }, from) {
      const row = { version, changed_at: changedAt!, record_json: JSON.stringify(settings) };
      if (from === 0) {
        const added = await database
          .insertInto('series_settings')
          .values({ work_id: workId, ...row })
          .onConflict((conflict) => conflict.doNothing())
          .executeTakeFirst();
        return added.numInsertedOrUpdatedRows === 1n;
      }
      const saved = await database
        .updateTable('series_settings')
        .set(row)
        .where('work_id', '=', workId)
        .where('version', '=', from)
        .executeTakeFirst();
      return saved.numUpdatedRows === 1n;
    },
    async typedNoise() {
      return (await newestNoise()) ?? { version: 0, typed: null };
    },
    async saveTypedNoise(typed, from, at) {
      if (((await newestNoise())?.version ?? 0) !== from) return false;
      await database
        .insertInto('room_noise')
        .values({ version: from + 1, typed, saved_at: at })
        .execute();
      return true;
    },
    async addApproval({ withdrawn: _, ...approval }) {
      await database
        .insertInto('approvals')
        .values({
          id: approval.id,
          work_id: approval.workId,
          pull_id: approval.pullId,
          given_at: approval.givenAt,
          record_json: JSON.stringify(approval),
        })
        .execute();
    },
    async withdraw(id, withdrawn) {
      const outcome = await database
        .insertInto('approval_withdrawals')
        .values({ approval_id: id, ...withdrawn })
        .onConflict((conflict) => conflict.doNothing())
        .executeTakeFirst();
      return outcome.numInsertedOrUpdatedRows === 1n;
    },
    async approvals(workId) {
      const rows = await database
        .selectFrom('approvals')
        .leftJoin('approval_withdrawals as gone', 'gone.approval_id', 'approvals.id')
        .select(['approvals.record_json', 'gone.at', 'gone.who', 'gone.why'])
        .where('approvals.work_id', '=', workId)
        .orderBy('approvals.given_at', 'desc')
        .orderBy('approvals.id', 'desc')
        .execute();
      return rows.map(({ record_json, at, who, why }) => ({
        ...(JSON.parse(record_json) as Omit<StoredApproval, 'withdrawn'>),
        withdrawn: at === null ? null : { at, who: who!, why: why! },
      }));
    },
  };
}
