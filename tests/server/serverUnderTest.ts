import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { openCodes } from '../../src/imaging/codecs/pictureLibrary.ts';
import type { ComparisonEntry, PhotographEntry } from '../../src/records/comparisonEntry.ts';
import { type ServerOptions, startServer } from '../../src/server/startServer.ts';

/** A server over a real data folder and a real port, both gone when the test is over. */
export interface ServerUnderTest {
  readonly address: string;
  readonly dataFolder: string;
  call(path: string, init?: RequestInit): Promise<Response>;
  json<T>(path: string, init?: RequestInit): Promise<T>;
  upload(fileName: string, bytes: Uint8Array): Promise<Response>;
  photograph(fileName: string, shade?: number): Promise<PhotographEntry>;
  comparison(stoneName: string, more?: object): Promise<ComparisonEntry>;
  /** Waits until a comparison is in one of these states. */
  until(id: string, ...states: string[]): Promise<ComparisonEntry>;
  stop(): Promise<void>;
}

export async function folderUnderTest(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-server-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** A small even PNG; each shade is another photograph. */
export async function aPicture(shade = 128, widthPx = 64, heightPx = 48): Promise<Uint8Array> {
  return openCodes(new Uint8Array(widthPx * heightPx).fill(shade), widthPx, heightPx, 1)
    .png()
    .toBuffer();
}

export function postJson(body: unknown): RequestInit {
  return { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
}

export async function serverUnderTest(options: Partial<ServerOptions> = {}): Promise<ServerUnderTest> {
  const dataFolder = options.dataFolder ?? (await folderUnderTest());
  const measuringModule = new URL('./fakeMeasuring.ts', import.meta.url);
  const started = await startServer({ port: 0, measuringModule, ...options, dataFolder });
  if (!started.ok) throw new Error(started.error.message);
  const { address } = started.value;
  let stopped: Promise<void> | null = null;
  const stop = () => {
    stopped ??= started.value.stop();
    return stopped;
  };
  onTestFinished(stop);

  const call = (path: string, init?: RequestInit) => fetch(address + path, init);
  async function json<T>(path: string, init?: RequestInit): Promise<T> {
    const response = await call(path, init);
    const body = await response.json();
    if (!response.ok) throw new Error(`${response.status} ${JSON.stringify(body)}`);
    return body as T;
  }
  const upload = (fileName: string, bytes: Uint8Array) => {
    const form = new FormData();
    form.append('photograph', new Blob([bytes as Uint8Array<ArrayBuffer>]), fileName);
    return call('/api/photographs', { method: 'POST', body: form });
  };
  async function photograph(fileName: string, shade?: number): Promise<PhotographEntry> {
    const response = await upload(fileName, await aPicture(shade));
    if (!response.ok) throw new Error(await response.text());
    return (await response.json()) as PhotographEntry;
  }
  const kept = new Map<string, PhotographEntry>();
  async function once(fileName: string): Promise<PhotographEntry> {
    const entry = kept.get(fileName) ?? (await photograph(fileName, kept.size + 1));
    kept.set(fileName, entry);
    return entry;
  }
  return {
    address,
    dataFolder,
    call,
    json,
    upload,
    photograph,
    async comparison(stoneName, more = {}) {
      const stone = await once(stoneName);
      const proof = await once('print.png');
      const request = {
        title: `Low Water, ${stoneName}`,
        sizeMm: [300, 400],
        stone: { photograph: stone.id },
        proof: { photograph: proof.id },
        ...more,
      };
      return json('/api/comparisons', postJson(request));
    },
    async until(id, ...states) {
      for (;;) {
        const entry = await json<ComparisonEntry>(`/api/comparisons/${id}`);
        if (states.includes(entry.state)) return entry;
        await new Promise((resolve) => setTimeout(resolve, 10));
      }
    },
    stop,
  };
}
