import { spawnSync } from 'node:child_process';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { expect, it, vi } from 'vitest';
import { exportDocument } from '../../src/application/export/exportDocument.ts';
import { exportKinds } from '../../src/application/export/exportKinds.ts';
import { exportToFolder } from '../../src/application/export/exportToFolder.ts';
import type { RunSummary } from '../../src/records/run.ts';
import type { WorkSeries } from '../../src/records/workSeries.ts';
import { loadSampleComparison } from '../../src/sample/saltreach/sampleComparison.ts';
import { pulledWorkId, samplePulls } from '../../src/sample/saltreach/samplePulls.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import type { ServerOptions } from '../../src/server/startServer.ts';
import { dataFolderAt } from '../../src/store/files/dataFolder.ts';
import { openTables } from '../../src/store/readTables.ts';
import { folderUnderTest, postJson, serverUnderTest } from './serverUnderTest.ts';

vi.setConfig({ testTimeout: 120_000 });

const pullModule = new URL('./nothing is measured.ts', import.meta.url);

/** The invented studio with a run and an edition that was begun. */
async function aStudio(options: Partial<ServerOptions> = {}) {
  const dataFolder = await folderUnderTest();
  const server = await serverUnderTest({
    dataFolder,
    studio: sampleStudio(),
    ...options,
  });
  const run = await server.json<RunSummary>('/api/runs', postJson({ workId: pulledWorkId }));
  const log = (path: string, clientId: string, kind: string, payload: object) =>
    server.json(path, postJson({ clientId, kind, at: '2026-03-04T01:00:00+01:00', payload }));
  await log(`/api/runs/${run.id}/events`, 'tap 1', 'stage-started', { stage: 'washout' });
  await log(`/api/runs/${run.id}/events`, 'tap 2', 'trouble', { words: '=HYPERLINK("x"), says "the\nlog"' });
  const edition = await server.json<{ id: string }>(
    `/api/works/${pulledWorkId}/editions`,
    postJson({ title: 'Low Water', size: 5 }),
  );
  const ledger = `/api/editions/${edition.id}/ledger`;
  await log(ledger, 'sheet 1', 'impression', { verdict: 'good' });
  const tones = { lights: 0.3, middles: null, darks: 0.59 };
  await log(ledger, 'reading 1', 'reading', { impression: 'sheet 1', ...tones, ageMinutes: 10 });
  return { server, dataFolder };
}

const rowsOf = (text: string) => parse<Record<string, string>>(text, { columns: true });

it('what docs/export.md says of the columns is what is written (UPDATE_DOCS=1 writes it anew)', async () => {
  const file = fileURLToPath(new URL('../../docs/export.md', import.meta.url));
  if (process.env.UPDATE_DOCS) await writeFile(file, exportDocument());
  expect(await readFile(file, 'utf8')).toBe(exportDocument());
});

it('everything is exported while the room is served: every table, every field, each as CSV and JSON', async () => {
  const { server, dataFolder } = await aStudio({
    pullModule,
    sample: loadSampleComparison,
    pulls: samplePulls,
  });
  await expect
    .poll(
      async () =>
        (await server.json<WorkSeries>(`/api/works/${pulledWorkId}/series`)).pulls.filter(
          ({ how }) => how === 'camera',
        ).length,
      { timeout: 60_000 },
    )
    .toBe(6);
  const place = join(await folderUnderTest(), 'records');
  const written = await exportToFolder(dataFolder, place);
  if (!written.ok) throw new Error(written.error.message);
  const names = exportKinds.flatMap(({ name }) => [`${name}.csv`, `${name}.json`]);
  expect((await readdir(place)).sort()).toEqual(names.sort());
  const reader = openTables(dataFolderAt(dataFolder));
  expect([...new Set(exportKinds.map(({ table }) => table))].sort()).toEqual([...reader.tables()].sort());
  reader.close();
  for (const { name, columns } of exportKinds) {
    const rows = rowsOf(await readFile(join(place, `${name}.csv`), 'utf8'));
    const { records } = JSON.parse(await readFile(join(place, `${name}.json`), 'utf8')) as {
      records: Record<string, unknown>[];
    };
    expect(rows.length, name).toBe(records.length);
    expect(written.value[name], name).toBe(records.length);
    if (rows[0]) expect(Object.keys(rows[0])).toEqual(columns.map((column) => column.name));
    const told = new Set(columns.map(({ path }) => path.split('.')[0]));
    const untold = [...new Set(records.flatMap((record) => Object.keys(record)))].filter(
      (key) => !told.has(key),
    );
    // what a comparison says of a zone beyond its change stays in JSON
    if (name !== 'comparison_zones') expect(untold, name).toEqual([]);
  }
  const [, trouble] = rowsOf(await readFile(join(place, 'run_events.csv'), 'utf8'));
  expect(trouble).toMatchObject({
    at: '2026-03-04T01:00:00+01:00',
    words: `'=HYPERLINK("x"), says "the\nlog"`,
  });
  const readings = rowsOf(await readFile(join(place, 'ledger_entries.csv'), 'utf8'));
  expect(readings[1]).toMatchObject({ lights: '0.3', middles: '', darks: '0.59' });
  const read = rowsOf(await readFile(join(place, 'pull_readings.csv'), 'utf8'));
  expect(read.length).toBe(7);
  expect(read.every(({ darksLow }) => Number(darksLow) > 0)).toBe(true);

  const answer = await server.call('/api/export.zip');
  expect(answer.headers.get('content-type')).toBe('application/zip');
  const archive = unzipSync(new Uint8Array(await answer.arrayBuffer()));
  expect(Object.keys(archive).sort()).toEqual(names);
  for (const name of names) {
    expect(Buffer.from(archive[name]!).toString(), name).toBe(await readFile(join(place, name), 'utf8'));
  }
  await expect.poll(() => readdir(join(dataFolder, 'incoming'))).toEqual([]);

  expect(await exportToFolder(dataFolder, place)).toMatchObject({ error: { code: 'folder-taken' } });
  const nowhere = join(place, 'nowhere', 'deep');
  expect(await exportToFolder(dataFolder, nowhere)).toMatchObject({ error: { code: 'output-unwritable' } });
  expect(await exportToFolder(place, nowhere)).toMatchObject({ error: { code: 'data-folder-missing' } });
});

it('whoever goes away while an export is made leaves nothing behind', async () => {
  const server = await serverUnderTest();
  const gone = new AbortController();
  const given = server.call('/api/export.zip', { signal: gone.signal });
  const incoming = dataFolderAt(server.dataFolder).incoming;
  await vi.waitUntil(async () => (await readdir(incoming)).length > 0, { timeout: 20_000, interval: 1 });
  gone.abort();
  await expect(given).rejects.toThrow();
  await vi.waitUntil(async () => (await readdir(incoming)).length === 0, { timeout: 20_000 });
});

const isHere = (program: string) => spawnSync(program, ['--version']).error === undefined;
const programs = [
  ['python3', 'works_and_drift.py'],
  ['Rscript', 'works_and_drift.R'],
] as const;

it.for(programs)('the example for %s reads an export', async ([program, example], { skip }) => {
  skip(!isHere(program), `${program} is not here`);
  const { dataFolder } = await aStudio();
  const place = join(await folderUnderTest(), 'records');
  expect(await exportToFolder(dataFolder, place)).toMatchObject({ ok: true });
  const script = fileURLToPath(new URL(`../../examples/${example}`, import.meta.url));
  const run = spawnSync(program, [script, place], { encoding: 'utf8' });
  expect(run.stderr).toBe('');
  expect(run.stdout).toContain('works: ');
  expect(run.stdout).toMatch(/darks 0\.590 to 0\.590 over 1 reading/);
});
