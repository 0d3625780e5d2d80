import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it, onTestFinished } from 'vitest';
import { limitConcurrency } from './limitConcurrency.ts';
import { workInThread } from './workInThread.ts';

it('work is ended when whoever waits goes away, also before its turn, and the next has its turn', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-work-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const file = join(folder, 'work.mjs');
  await writeFile(
    file,
    `import { parentPort, workerData } from 'node:worker_threads';
     parentPort.postMessage({ kind: 'note', note: 0.5 });
     if (workerData === 'endless') for (;;);
     parentPort.postMessage({ kind: 'answer', answer: workerData });`,
  );
  const turn = limitConcurrency(1);
  const ask = (input: string, onProgress: (ending: AbortController) => void) => {
    const ending = new AbortController();
    const progress = () => onProgress(ending);
    const end = workInThread<string>(turn, pathToFileURL(file), input, { progress, signal: ending.signal });
    return { end, ending };
  };
  const endless = ask('endless', (ending) => ending.abort());
  const early = ask('early', () => undefined);
  early.ending.abort();
  const last = ask('last', () => undefined);
  expect(await endless.end).toMatchObject({ ok: false, error: { code: 'stopped' } });
  expect(await early.end).toMatchObject({ ok: false, error: { code: 'stopped' } });
  expect(await last.end).toEqual({ ok: true, value: 'last' });
});
