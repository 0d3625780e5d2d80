import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keptRecordsIn } from '../keptRecords.ts';
import { comparisonRepositoryIn } from '../repositories/comparisonRepository.ts';
import { suspectRepositoryIn } from '../repositories/suspectRepository.ts';
import { dataOfVersions } from './earlierVersions.testing.ts';
import { currentVersion, databaseVersion, migrate } from './migrate.ts';
import { type OpenDatabase, openDatabase, openFile } from './openDatabase.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-migrate-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function atVersion(version: number): Promise<string> {
  const file = join(folder, `at-${version}.sqlite`);
  const { database, close } = openFile(file);
  for (let reached = 1; reached <= version; reached += 1) {
    await migrate(database, reached);
    for (const statement of dataOfVersions[reached - 1]!) await sql.raw(statement).execute(database);
  }
  await close();
  return file;
}

async function opened(file: string): Promise<OpenDatabase> {
  const result = await openDatabase(file);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

async function expectRecords(database: OpenDatabase['database']): Promise<void> {
  const records = keptRecordsIn(database);
  expect(await records.works.find('work')).toMatchObject({ title: 'Low Water', version: 3, stage: 'drawn' });
  expect(await records.stones.find('stone')).toMatchObject({ name: 'S-01' });
  expect(await records.media.lastUse('river-crayon')).toEqual({ workTitle: 'Low Water', zoneName: 'Sky' });
  expect(await records.etchTables.find('own', 2)).toMatchObject({ table: { name: 'Ours', version: 2 } });
  expect(await records.plans.listFirst('work')).toMatchObject([
    { id: 'plan', table: { id: 'own', version: 2, name: 'Ours' }, feasible: true },
  ]);
}

async function expectRun(database: OpenDatabase['database']): Promise<void> {
  const { runs } = keptRecordsIn(database);
  expect(await runs.find('run')).toMatchObject({ workId: 'work', planId: 'plan', events: 1 });
  expect(await runs.events('run', { after: 0, limit: 10 })).toEqual([
    {
      sequence: 1,
      clientId: 'tap-1',
      kind: 'laid',
      at: '2026-03-04T01:00:00+01:00',
      sentAt: null,
      receivedAt: '2026-03-04T00:00:01.000Z',
      actor: 'P.R.',
      device: 'phone',
      payload: { place: 'sky' },
    },
  ]);
  for (const change of [`UPDATE run_events SET kind = 'moved'`, `DELETE FROM run_events`]) {
    await expect(sql.raw(change).execute(database)).rejects.toThrow('what happened is never');
  }
}

async function expectDays(database: OpenDatabase['database']): Promise<void> {
  const { studio, deadlines } = keptRecordsIn(database);
  expect(await studio.find()).toEqual({
    timeZone: 'Europe/London',
    version: 2,
    changedAt: '2026-03-09T00:00:00.000Z',
  });
  expect(await deadlines.list()).toMatchObject([
    { workId: 'work', deadline: { goal: 'proofs' }, version: 1 },
  ]);
}

async function expectInk(database: OpenDatabase['database']): Promise<void> {
  const asked = {
    search: '',
    putBy: 'all',
    after: null,
    limit: 10,
    work: 'work',
    verdict: 'good',
  } as const;
  const found = await keptRecordsIn(database).inks.list(asked);
  expect(found?.inks).toMatchObject([{ id: 'ink', name: 'Mudbank', softParts: 70 }]);
}

async function expectMaterials(database: OpenDatabase['database']): Promise<void> {
  const { materials } = keptRecordsIn(database);
  expect(await materials.find('gum')).toMatchObject({ name: 'Gum', hazards: [], putBy: false });
}

async function expectPulls(database: OpenDatabase['database']): Promise<void> {
  const { pulls, pullMeasurings, series } = keptRecordsIn(database);
  expect(await pulls.numbered('work', 3)).toMatchObject({ id: 'pull', paper: { words: 'rag' } });
  expect(await pulls.numbered('work', 4)).toMatchObject({ kind: 'for-approval', pressureEighths: 6.5 });
  expect(await pullMeasurings.nextWaiting()).toMatchObject({ pullId: 'pull', photograph: 'aa' });
  expect(await series.settings('work')).toMatchObject({ tolerance: 0.03, version: 1 });
  expect(await series.typedNoise()).toEqual({ version: 1, typed: 0.01 });
  expect(await series.approvals('work')).toMatchObject([{ id: 'given', withdrawn: { who: 'A.T.' } }]);
  await expect(sql.raw(`DELETE FROM approvals`).execute(database)).rejects.toThrow('never removed');
}

async function expectEdition(database: OpenDatabase['database']): Promise<void> {
  const { editions, ledgers } = keptRecordsIn(database);
  expect(await editions.find('edition')).toMatchObject({
    title: 'Low Water',
    prints: [{ impression: 'sheet-1', kind: 'edition', number: 1 }],
  });
  expect(await ledgers.entries('edition')).toMatchObject([{ sequence: 1, actor: 'P.R.' }, { sequence: 2 }]);
  for (const change of [`UPDATE ledger_entries SET kind = 'note'`, `DELETE FROM ledger_entries`]) {
    await expect(sql.raw(change).execute(database)).rejects.toThrow('what happened is never');
  }
  const given = (kind: string, number: string) =>
    sql
      .raw(`INSERT INTO edition_prints VALUES ('edition', 'sheet-2', '${kind}', ${number})`)
      .execute(database);
  await expect(given('edition', '1'), 'a number given twice').rejects.toThrow('UNIQUE');
  await expect(given('archive', '1'), 'a number where none belongs').rejects.toThrow('CHECK');
  await expect(given('artist', 'NULL'), 'no number where one belongs').rejects.toThrow('CHECK');
}

async function expectImpressions(database: OpenDatabase['database']): Promise<void> {
  const { pulls } = keptRecordsIn(database);
  const impression = { edition: 'edition', id: 'sheet-1' };
  expect(await pulls.ofImpression('edition', 'sheet-1')).toMatchObject({ id: 'shown', impression });
  expect(await pulls.impressionsOf({ work: 'work' })).toMatchObject([{ id: 'shown' }]);
  const proofs = await pulls.ofWork('work');
  expect(
    proofs.map(({ id }) => id),
    'impressions are no proofs',
  ).toEqual(['pull', 'fourth']);
}

async function expectDevices(database: OpenDatabase['database']): Promise<void> {
  const { devices } = keptRecordsIn(database);
  expect(await devices.sealed('a seal')).toMatchObject({
    id: 'phone',
    shutOutAt: '2026-03-17T00:00:00.000Z',
  });
  expect(await devices.named('bench PHONE')).toMatchObject({ id: 'phone' });
  await expect(sql.raw(`UPDATE devices SET shut_out_at = NULL`).execute(database)).rejects.toThrow(
    'stays so',
  );
  await expect(sql.raw(`DELETE FROM devices`).execute(database)).rejects.toThrow('never removed');
}

async function expectTestStones(database: OpenDatabase['database']): Promise<void> {
  const { testStones } = keptRecordsIn(database);
  expect(await testStones.find('t-1')).toMatchObject({ name: 'T-1', version: 1 });
  expect(await testStones.events('t-1')).toMatchObject([{ kind: 'corrected', actor: 'P.R.' }]);
  for (const change of [`UPDATE test_stone_events SET kind = 'seen'`, `DELETE FROM test_stone_events`]) {
    await expect(sql.raw(change).execute(database)).rejects.toThrow('what was read is never');
  }
}

describe('migrations', () => {
  it('bring every earlier version with data in it to the current one, losing nothing', async () => {
    expect(dataOfVersions.length).toBe(currentVersion);
    for (let version = 1; version <= currentVersion; version += 1) {
      const { database, close } = await opened(await atVersion(version));
      expect(await databaseVersion(database)).toBe(currentVersion);
      const comparisons = comparisonRepositoryIn(database);
      expect(await comparisons.find('one'), `from version ${version}`).toMatchObject({
        title: 'Low Water',
        state: 'measured',
        finding: 'Lights LOST',
        interruptions: 0,
      });
      const photographs = await database.selectFrom('comparison_photographs').selectAll().execute();
      expect(photographs).toEqual([{ comparison_id: 'one', photograph_id: 'aa' }]);
      if (version >= 2) expect(await comparisons.find('two')).toMatchObject({ interruptions: 1 });
      if (version >= 2) {
        expect(await comparisons.find('burnt-out')).toMatchObject({ state: 'not-done' });
        expect(await comparisons.find('left-off')).toMatchObject({ state: 'stopped' });
      }
      if (version < 3) {
        const found = await comparisons.list({ search: 'lost low', after: null, limit: 10 });
        expect(found?.comparisons.map((entry) => entry.id)).toEqual(['one']);
      }
      if (version >= 4) await expectRecords(database);
      if (version >= 5) await expectRun(database);
      if (version >= 6) {
        expect(await keptRecordsIn(database).kit.find('heron')).toMatchObject({ name: 'Heron', version: 2 });
      }
      if (version >= 7) await expectPulls(database);
      if (version >= 8) await expectEdition(database);
      if (version >= 10) await expectDays(database);
      if (version >= 11) await expectInk(database);
      if (version >= 12) await expectMaterials(database);
      if (version >= 13) {
        const byCause = version >= 16 ? { scum: 1, tint: 1 } : { scum: 1 };
        const closed = Object.keys(byCause).length;
        expect(await suspectRepositoryIn(database).counts()).toEqual({ closed, byCause });
      }
      if (version >= 14) {
        const { reports, foreignProtocols } = keptRecordsIn(database);
        expect(await reports.find('year')).toMatchObject({ title: 'A year', version: 2, works: ['work'] });
        expect(await foreignProtocols.find('ebb')).toMatchObject({
          putBy: true,
          protocol: { title: 'Ebb' },
        });
      }
      if (version >= 15) await expectImpressions(database);
      if (version >= 17) await expectTestStones(database);
      if (version >= 18) await expectDevices(database);
      if (version >= 19) {
        const { testPlans } = keptRecordsIn(database);
        expect(await testPlans.find('planned')).toMatchObject({ title: 'T-5', version: 2 });
      }
      await close();
    }
  });

  it('leave a whole earlier version where one fails half way', async () => {
    const file = await atVersion(2);
    const { database, close } = openFile(file);
    await sql.raw('ALTER TABLE comparisons ADD COLUMN search_text TEXT').execute(database);
    await expect(migrate(database)).rejects.toThrow('search_text');
    expect(await databaseVersion(database)).toBe(2);
    await close();
  });

  it('leave a newer database alone', async () => {
    const file = await atVersion(currentVersion);
    const { database, close } = openFile(file);
    await sql.raw(`PRAGMA user_version = ${currentVersion + 1}`).execute(database);
    await close();
    expect(await openDatabase(file)).toMatchObject({ ok: false, error: { code: 'database-newer' } });
  });
});

describe('an open database', () => {
  it('writes ahead, syncs every commit and holds foreign keys', async () => {
    const { database, close } = await opened(join(folder, 'new.sqlite'));
    const pragma = async (name: string) =>
      Object.values((await sql.raw<Record<string, unknown>>(`PRAGMA ${name}`).execute(database)).rows[0]!)[0];
    expect(await pragma('journal_mode')).toBe('wal');
    expect(await pragma('synchronous')).toBe(2);
    expect(await pragma('foreign_keys')).toBe(1);
    const orphan = database
      .insertInto('comparison_photographs')
      .values({ comparison_id: 'x', photograph_id: 'y' });
    await expect(orphan.execute()).rejects.toThrow('FOREIGN KEY');
    await close();
  });
});
