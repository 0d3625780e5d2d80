import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runInThread, threadModule } from './runInThread.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-threads-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function moduleOf(name: string, body: string): Promise<URL> {
  const file = join(folder, name);
  const head = "import { parentPort, workerData } from 'node:worker_threads';\n";
  await writeFile(file, head + body);
  return pathToFileURL(file);
}

describe('runInThread', () => {
  it('hands over data, passes notes in order and gives the answer, from TypeScript and JavaScript', async () => {
    const typescript = await moduleOf(
      'double.mts',
      `const given: number = workerData;
       for (const step of [1, 2]) parentPort!.postMessage({ kind: 'note', note: step });
       parentPort!.postMessage({ kind: 'answer', answer: given * 2 });`,
    );
    const javascript = await moduleOf(
      'double.mjs',
      `for (const step of [1, 2]) parentPort.postMessage({ kind: 'note', note: step });
       parentPort.postMessage({ kind: 'answer', answer: workerData * 2 });`,
    );
    for (const module of [typescript, javascript]) {
      const notes: number[] = [];
      const { end } = runInThread<number, number>(module, 21, (note) => notes.push(note));
      expect(await end).toEqual({ kind: 'answered', answer: 42 });
      expect(notes).toEqual([1, 2]);
    }
  });

  it('tells of an error thrown, of an exit, and of being terminated', async () => {
    const thrown = runInThread(await moduleOf('throw.mjs', `throw new Error('out of gum');`), null);
    expect(await thrown.end).toEqual({ kind: 'crashed', why: 'out of gum' });
    const left = runInThread(await moduleOf('exit.mjs', `process.exit(3);`), null);
    expect(await left.end).toMatchObject({ kind: 'crashed', why: expect.stringContaining('3') });
    const busy = runInThread(await moduleOf('busy.mjs', `for (;;);`), null);
    await busy.terminate();
    expect(await busy.end).toEqual({ kind: 'terminated' });
  });

  it('finds the module beside the caller in source and when built', () => {
    expect(threadModule('file:///a/b.ts', 'c').href).toBe('file:///a/c.ts');
    expect(threadModule('file:///a/b.js', 'c').href).toBe('file:///a/c.js');
  });
});
