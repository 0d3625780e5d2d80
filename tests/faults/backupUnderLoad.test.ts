import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import SqliteDatabase from 'better-sqlite3';
import { sql } from 'kysely';
import { expect, it, onTestFinished, vi } from 'vitest';
import { makeBackup } from '../../src/application/backup/makeBackup.ts';
import { restoreBackup } from '../../src/application/backup/restoreBackup.ts';
import { verifyBackup } from '../../src/application/backup/verifyBackup.ts';
import { dataOfVersions } from '../../src/store/database/earlierVersions.testing.ts';
import { currentVersion, migrate } from '../../src/store/database/migrate.ts';
import { openFile } from '../../src/store/database/openDatabase.ts';
import { openStore } from '../../src/store/openStore.ts';
import { folderUnderTest } from '../server/serverUnderTest.ts';
import { filesBelow, savedFolder } from './savedFolder.ts';

vi.setConfig({ testTimeout: 120_000 });

const logFolder = fileURLToPath(new URL('./logFolder.ts', import.meta.url));
const now = () => new Date();

type Rows = ReadonlyMap<string, readonly unknown[]>;

/** Every row of every table, and that SQLite finds nothing amiss. */
function rowsOf(file: string): Rows {
  const database = new SqliteDatabase(file, { readonly: true });
  try {
    expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(database.pragma('foreign_key_check')).toEqual([]);
    const names = database
      .prepare<[], { name: string }>(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`)
      .all();
    return new Map(names.map(({ name }) => [name, database.prepare(`SELECT * FROM "${name}"`).all()]));
  } finally {
    database.close();
  }
}

it('backups made while another process writes hold all that was acknowledged before, and come back whole', async () => {
  const dataFolder = await folderUnderTest();
  const place = await folderUnderTest();
  await savedFolder(dataFolder);
  const writer = spawn(process.execPath, ['--import', 'tsx', logFolder, dataFolder, '1'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void writer.kill('SIGKILL'));
  const gone = once(writer, 'exit');
  let text = '';
  const acknowledged = () => Number(text.split('\n').at(-2) ?? 0);
  writer.stdout.on('data', (chunk: Buffer) => {
    text += chunk.toString();
  });
  const before: number[] = [];
  for (const count of [1, 2, 3]) {
    while (acknowledged() < 20 * count) await once(writer.stdout, 'data');
    before.push(acknowledged());
    const made = await makeBackup({ dataFolder, to: join(place, `${count}.tar`), now });
    expect(made).toMatchObject({ ok: true, value: { concerns: [] } });
  }
  while (acknowledged() <= before.at(-1)!) await once(writer.stdout, 'data');
  writer.kill('SIGKILL');
  await gone;
  const kept = rowsOf(join(dataFolder, 'stonetone.sqlite'));
  const files = await filesBelow(dataFolder);
  for (const [index, least] of before.entries()) {
    const again = join(place, `again ${index}`);
    expect(await restoreBackup(join(place, `${index + 1}.tar`), again)).toMatchObject({ ok: true });
    const restored = rowsOf(join(again, 'stonetone.sqlite'));
    const events = restored.get('run_events')!;
    expect(events.length).toBeGreaterThanOrEqual(least);
    expect(events).toEqual(kept.get('run_events')!.slice(0, events.length));
    for (const [table, rows] of kept)
      if (table !== 'run_events') expect(restored.get(table), table).toEqual(rows);
    expect([...restored.keys()]).toEqual([...kept.keys()]);
    const restoredFiles = [...(await filesBelow(again))].filter(([name]) => !name.startsWith('stonetone'));
    expect(restoredFiles).toEqual([...files].filter(([name]) => /^(photographs|results)\//.test(name)));
  }
});

it('a backup of every earlier version comes back row by row, and is brought up to date when it is opened', async () => {
  for (let version = 1; version <= currentVersion; version++) {
    const dataFolder = await folderUnderTest();
    const { database, close } = openFile(join(dataFolder, 'stonetone.sqlite'));
    for (let reached = 1; reached <= version; reached++) {
      await migrate(database, reached);
      for (const statement of dataOfVersions[reached - 1]!) await sql.raw(statement).execute(database);
    }
    await close();
    const to = join(await folderUnderTest(), 'early.tar');
    expect(await makeBackup({ dataFolder, to, now })).toMatchObject({ ok: true });
    expect(await verifyBackup(to)).toMatchObject({ ok: true, value: { databaseVersion: version } });
    const again = await folderUnderTest();
    expect(await restoreBackup(to, again)).toMatchObject({ ok: true });
    const kept = rowsOf(join(dataFolder, 'stonetone.sqlite'));
    expect(rowsOf(join(again, 'stonetone.sqlite'))).toEqual(kept);
    const opened = await openStore(again);
    if (!opened.ok) throw new Error(opened.error.message);
    expect(await opened.value.comparisons.find('one')).toMatchObject({ title: 'Low Water' });
    expect(await opened.value.works.find('none')).toBeNull();
    await opened.value.close();
    const brought = rowsOf(join(again, 'stonetone.sqlite'));
    for (const [table, rows] of kept)
      expect(brought.get(table)!.length, `${version} ${table}`).toBe(rows.length);
  }
});
