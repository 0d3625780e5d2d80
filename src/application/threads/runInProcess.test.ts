import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runInProcess } from './runInProcess.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-processes-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function moduleOf(name: string, body: string): Promise<URL> {
  const file = join(folder, name);
  await writeFile(file, `import { parentPort, workerData } from 'node:worker_threads';\n${body}`);
  return pathToFileURL(file);
}

it('hands over data, passes notes in order and gives the answer with its maps and bytes, from TypeScript and JavaScript', async () => {
  const body = `for (const step of [1, 2]) parentPort.postMessage({ kind: 'note', note: step });
    parentPort.postMessage({ kind: 'answer', answer: new Map([['file', new Uint8Array(workerData.size).fill(7)]]) });`;
  const typescript = await moduleOf('bytes.mts', `const wanted: number = 1;\n${body}`);
  for (const module of [typescript, await moduleOf('bytes.mjs', body)]) {
    const notes: number[] = [];
    const { end } = runInProcess<number, Map<string, Uint8Array>>(module, { size: 3e6 }, (note) =>
      notes.push(note),
    );
    const ended = await end;
    if (ended.kind !== 'answered') throw new Error(JSON.stringify(ended));
    const bytes = ended.answer.get('file')!;
    expect([bytes.length, bytes[0], bytes.at(-1)]).toEqual([3e6, 7, 7]);
    expect(notes).toEqual([1, 2]);
  }
});

it('tells of an error thrown, of an exit, of a process that was ended from outside, and of being terminated', async () => {
  const ends = async (name: string, body: string) => runInProcess(await moduleOf(name, body), {}).end;
  expect(await ends('throw.mjs', `throw new Error('out of gum');`)).toEqual({
    kind: 'crashed',
    why: 'out of gum',
  });
  expect(await ends('exit.mjs', `process.exit(3);`)).toMatchObject({ why: expect.stringContaining('3') });
  const killed = await ends('killed.mjs', `process.kill(process.pid, 'SIGKILL');`);
  expect(killed).toEqual({ kind: 'crashed', why: 'it ended without an answer (SIGKILL)' });
  const busy = runInProcess(await moduleOf('busy.mjs', `for (;;);`), {});
  await busy.terminate();
  expect(await busy.end).toEqual({ kind: 'terminated' });
});

it('raises the flag of a module that is asked to stop, even while it computes', async () => {
  const body = `parentPort.postMessage({ kind: 'note', note: 'begun' });
    const flag = new Int32Array(workerData.stopFlag);
    while (Atomics.load(flag, 0) === 0);
    parentPort.postMessage({ kind: 'answer', answer: 'stopped' });`;
  const running = runInProcess<string, string>(await moduleOf('stops.mjs', body), {}, () =>
    running.askToStop(),
  );
  expect(await running.end).toEqual({ kind: 'answered', answer: 'stopped' });
});
