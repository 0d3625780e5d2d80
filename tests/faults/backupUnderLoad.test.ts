import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
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
import { aPicture, folderUnderTest, postJson } from '../server/serverUnderTest.ts';
import { filesBelow, savedFolder } from './savedFolder.ts';
import { killServer, serveInProcess } from './serverProcess.ts';

vi.setConfig({ testTimeout: 120_000 });

/** What a request that must succeed answers. */
async function sent(
  address: string,
  path: string,
  init: RequestInit,
): Promise<Record<'id' | 'sequence', string>> {
  const answer = await fetch(address + path, init);
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return (await answer.json()) as Record<'id' | 'sequence', string>;
}

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

it('backups made while photographs come in and taps are logged hold both, and come back whole', async () => {
  const dataFolder = await folderUnderTest();
  const place = await folderUnderTest();
  await savedFolder(dataFolder);
  const { server, address } = await serveInProcess(dataFolder);
  const stone = await sent(address, '/api/stones', postJson({ name: 'S-01', widthMm: 300, heightMm: 400 }));
  const work = await sent(address, '/api/works', postJson({ title: 'Low Water', stoneId: stone.id }));
  const run = await sent(address, '/api/runs', postJson({ workId: work.id }));
  let [goesOn, count] = [true, 0];
  const acknowledged: { readonly id: string; readonly event: number }[] = [];
  const loading = (async () => {
    while (goesOn) {
      count += 1;
      const form = new FormData();
      form.append(
        'photograph',
        new Blob([(await aPicture(count % 250, 64, 48 + count)) as BlobPart]),
        `${count}.png`,
      );
      const { id } = await sent(address, '/api/photographs', { method: 'POST', body: form });
      const tap = { clientId: `tap ${count}`, kind: 'note', at: now().toISOString(), payload: { count } };
      const { sequence } = await sent(address, `/api/runs/${run.id}/events`, postJson(tap));
      acknowledged.push({ id, event: Number(sequence) });
    }
  })();
  const before: number[] = [];
  for (const saved of [1, 2, 3]) {
    while (acknowledged.length < 4 * saved) await sleep(5);
    before.push(acknowledged.length);
    const made = await makeBackup({ dataFolder, to: join(place, `${saved}.tar`), now });
    expect(made).toMatchObject({ ok: true, value: { concerns: [] } });
  }
  goesOn = false;
  await loading;
  await killServer(server);
  const kept = rowsOf(join(dataFolder, 'stonetone.sqlite'));
  const grows = ['photographs', 'run_events'];
  for (const [index, least] of before.entries()) {
    const again = join(place, `again ${index}`);
    expect(await restoreBackup(join(place, `${index + 1}.tar`), again)).toMatchObject({ ok: true });
    const restored = rowsOf(join(again, 'stonetone.sqlite'));
    for (const [table, rows] of kept) {
      if (!grows.includes(table)) expect(restored.get(table), table).toEqual(rows);
      else expect(rows, table).toEqual(expect.arrayContaining([...restored.get(table)!]));
    }
    const photographs = restored.get('photographs') as readonly { id: string; kind: string }[];
    const names = photographs.map(({ id }) => id);
    for (const { id, event } of acknowledged.slice(0, least)) {
      expect(names).toContain(id);
      expect(restored.get('run_events')!.length).toBeGreaterThanOrEqual(event);
    }
    const files = await filesBelow(again);
    for (const { id, kind } of photographs) {
      const bytes = files.get(join('photographs', id.slice(0, 2), `${id}.${kind}`));
      expect(createHash('sha256').update(bytes!).digest('hex')).toBe(id);
    }
  }
});

/** Tables that bear another name since. */
const calledNow: Readonly<Record<string, string>> = { etch_table_versions: 'etch_table_issues' };

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
      expect(brought.get(calledNow[table] ?? table)?.length, `${version} ${table}`).toBe(rows.length);
  }
});
