import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { expect, it, onTestFinished, vi } from 'vitest';
import type { Failure } from '../../src/foundation/failure.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';
import { killServer } from './serverProcess.ts';

vi.setConfig({ testTimeout: 120_000 });

const serveFolder = fileURLToPath(new URL('../server/serveFolder.ts', import.meta.url));
/** No file may grow beyond this, in blocks of 1,024 bytes: a disk that is full, for one process alone. */
const mostBlocks = 700;

/** Serves a folder in a process of its own whose files cannot grow. */
async function serveOnFullDisk(dataFolder: string) {
  const command = `ulimit -f ${mostBlocks}; exec "$0" --import tsx "$1" "$2"`;
  const server = spawn('bash', ['-c', command, process.execPath, serveFolder, dataFolder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void server.kill('SIGKILL'));
  const [line] = (await once(server.stdout, 'data')) as [Buffer];
  return { server, address: line.toString().trim() };
}

it('on a full disk says that it was not kept, goes on reading, and has all that it acknowledged', async () => {
  const dataFolder = await folderUnderTest();
  const before = await serverUnderTest({ dataFolder, studio: sampleStudio() });
  const { id } = await before.json<RunSummary>('/api/runs', postJson({ workId: 'saltreach-low-water' }));
  await before.stop();
  const { server, address } = await serveOnFullDisk(dataFolder);
  const log = (clientId: string) =>
    fetch(
      `${address}/api/runs/${id}/events`,
      postJson({ clientId, kind: 'note', at: new Date().toISOString(), payload: { text: 'x'.repeat(4000) } }),
    );
  let acknowledged = 0;
  let refusal: Response;
  for (;;) {
    const answer = await log(`tap ${acknowledged + 1}`);
    if (answer.status !== 201) {
      refusal = answer;
      break;
    }
    acknowledged++;
  }
  expect(refusal.status).toBe(507);
  expect((await refusal.json()) as Failure).toMatchObject({
    code: 'storage-full',
    message: expect.stringContaining('not kept'),
  });
  expect((await log(`tap ${acknowledged + 1}`)).status).toBe(507);
  expect(acknowledged).toBeGreaterThan(10);
  const shown = await fetch(`${address}/api/runs/${id}/events`);
  expect(((await shown.json()) as { events: RunEvent[] }).events.length).toBe(acknowledged);
  await killServer(server);
  const after = await serverUnderTest({ dataFolder });
  const next = { clientId: `tap ${acknowledged + 1}`, kind: 'note', at: new Date().toISOString() };
  expect(await after.json<RunEvent>(`/api/runs/${id}/events`, postJson(next))).toMatchObject({
    sequence: acknowledged + 1,
  });
});
