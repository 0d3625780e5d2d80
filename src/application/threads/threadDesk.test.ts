import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it, onTestFinished } from 'vitest';
import { failure } from '../../foundation/failure.ts';
import { createThreadDesk } from './threadDesk.ts';

async function moduleOf(body: string): Promise<URL> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-desk-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const file = join(folder, 'thread.mjs');
  await writeFile(file, body);
  return pathToFileURL(file);
}

it('gives up what takes for ever, says so, and has its place for the next one', async () => {
  const desk = createThreadDesk(1);
  const endless = await moduleOf('for (;;);');
  const quick = await moduleOf(
    `import { parentPort } from 'node:worker_threads'; parentPort.postMessage({ kind: 'answer', answer: 7 });`,
  );
  const late = failure('picture-too-slow', { file: 'moon.heic', seconds: 120 });
  const given = desk.run(endless, null, { withinMs: 50, late });
  const next = desk.run(quick, null, { withinMs: 60_000, late });
  expect(await given).toEqual({ ok: false, error: late });
  expect(await next).toEqual({ ok: true, value: 7 });
  const stopped = desk.run(endless, null, { withinMs: 60_000, late });
  await new Promise((resolve) => setTimeout(resolve, 20));
  await desk.stop();
  expect(await stopped).toMatchObject({ ok: false, error: { code: 'stopped' } });
});
