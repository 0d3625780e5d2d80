import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestStoneReading } from '../src/records/patchReading.ts';
import type { TestStone } from '../src/records/testStone.ts';
import { patchStone, patchStoneGrid } from '../src/sample/render/layouts/patchStone.ts';
import { layGrid } from '../src/studio/trials/reading/layGrid.ts';
import { renderedBenchPair } from './benchPair.ts';
import { serveSettled } from './served/servedProcess.ts';

/** One reading over HTTP, from the request to the findings that are kept. */
export interface TimedReading {
  readonly what: string;
  readonly seconds: number;
  readonly read: number;
}

/** Reads a rendered test stone over HTTP: a first print, a second one of the same stone, and both after a patch was moved. */
export async function readTestStoneJobs(seed: number, megapixels: number): Promise<readonly TimedReading[]> {
  const pair = patchStone(seed, megapixels);
  const { input } = await renderedBenchPair(pair, 'usual');
  // the same stone printed once more: another photograph of another sheet
  const { input: other } = await renderedBenchPair({ ...pair, seed: pair.seed + 1000 }, 'usual');
  const media = new Map(pair.drawing.zones.map(({ id, medium }) => [id, medium]));
  const patches = layGrid(patchStoneGrid).map((patch) => ({
    ...patch,
    treatment: { medium: media.get(patch.id)! },
  }));
  const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-test-stone-'));
  const { address, stop } = await serveSettled(dataFolder);

  async function send<T>(method: string, path: string, body?: unknown): Promise<T> {
    const headers = { 'content-type': 'application/json' };
    const init = body === undefined ? { method } : { method, headers, body: JSON.stringify(body) };
    const response = await fetch(address + path, init);
    if (!response.ok) throw new Error(await response.text());
    return (await response.json()) as T;
  }

  async function upload(name: string, bytes: Uint8Array): Promise<string> {
    const form = new FormData();
    form.append('photograph', new Blob([bytes as Uint8Array<ArrayBuffer>]), name);
    const response = await fetch(`${address}/api/photographs`, { method: 'POST', body: form });
    return ((await response.json()) as { id: string }).id;
  }

  async function timed(what: string, path: string): Promise<TimedReading> {
    const from = performance.now();
    await send('POST', `${path}/readings`);
    for (;;) {
      const { prints } = await send<TestStoneReading>('GET', `${path}/reading`);
      if (prints.every(({ state }) => state !== 'waiting' && state !== 'measuring')) {
        const read = prints.reduce((sum, print) => sum + print.patches.filter(({ hold }) => hold).length, 0);
        const seconds = (performance.now() - from) / 1000;
        return { what, seconds, read };
      }
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }

  try {
    const print = async (id: string, { bytes, corners }: (typeof input)['proof']) => {
      const photograph = await upload(`${id}.jpg`, bytes);
      return { id, name: id, photograph, corners };
    };
    const first = await print('first', input.proof);
    const second = await print('second', other.proof);
    const photograph = await upload('stone.jpg', input.stone.bytes);
    const stone = await send<TestStone>('POST', '/api/test-stones', {
      name: 'T-41',
      sizeMm: pair.drawing.sizeMm,
      factors: [{ name: 'medium' }],
      patches,
      drawn: { photograph, corners: input.stone.corners },
      prints: [first],
    });
    const path = `/api/test-stones/${stone.id}`;
    const change = async (changes: Partial<TestStone> | object) => {
      const { version } = await send<TestStone>('GET', path);
      return send<TestStone>('PATCH', path, { version, ...changes });
    };
    const readings = [await timed('a first print', path)];
    const { prints } = await send<TestStone>('GET', path);
    await change({ prints: [...prints, second] });
    readings.push(await timed('a second print', path));
    await change({ prints: (await send<TestStone>('GET', path)).prints.slice(0, 1) });
    const [corner, ...others] = patches;
    const moved = { ...corner!, polygonMm: corner!.polygonMm.map(([x, y]) => [x + 1, y]) };
    await change({ patches: [moved, ...others] });
    readings.push(await timed('a patch moved', path));
    return readings;
  } finally {
    await stop();
    await rm(dataFolder, { recursive: true, force: true });
  }
}
