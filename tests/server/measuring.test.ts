import { unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import { openStore } from '../../src/store/openStore.ts';
import { aRecord } from './aRecord.ts';
import { aPicture, folderUnderTest, type ServerUnderTest, serverUnderTest } from './serverUnderTest.ts';

const stop = (server: ServerUnderTest, id: string) =>
  server.call(`/api/comparisons/${id}/measuring`, { method: 'DELETE' });
const measure = (server: ServerUnderTest, id: string) =>
  server.call(`/api/comparisons/${id}/measuring`, { method: 'POST' });

describe('the measuring queue', () => {
  it('measures one at a time, in the order asked for', async () => {
    const server = await serverUnderTest();
    const first = await server.comparison('slow.png');
    const second = await server.comparison('stone.png');
    const third = await server.comparison('stone.png');
    await server.until(first.id, 'measuring');
    expect((await server.until(second.id, 'waiting', 'measured')).state).toBe('waiting');
    expect((await stop(server, third.id)).status).toBe(202);
    expect((await server.until(third.id, 'stopped', 'measured')).state).toBe('stopped');
    await stop(server, first.id);
    await server.until(first.id, 'stopped');
    await server.until(second.id, 'measured');
    expect((await server.until(third.id, 'stopped', 'measured')).state).toBe('stopped');
  });

  it('ends a thread that does not listen, and goes on with the next', async () => {
    const server = await serverUnderTest();
    const deaf = await server.comparison('deaf.png');
    const next = await server.comparison('stone.png');
    await server.until(deaf.id, 'measuring');
    expect((await stop(server, deaf.id)).status).toBe(202);
    expect((await stop(server, deaf.id)).status).toBe(202);
    await server.until(deaf.id, 'stopped');
    await server.until(next.id, 'measured');
  });

  it('answers while it measures, and tells how far it has come', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('deaf.png');
    let entry: ComparisonEntry;
    do entry = await server.until(id, 'measuring');
    while (entry.progress === null);
    expect(entry.progress).toEqual({ stage: 'reading', fraction: 0.1 });
    await server.call(`/api/comparisons/${id}`, { method: 'DELETE' });
    const next = await server.comparison('stone.png');
    await server.until(next.id, 'measured');
  });

  it('measures again what was stopped or not done, and takes a kept result where nothing changed', async () => {
    const server = await serverUnderTest();
    const failed = await server.comparison('fails.png');
    await server.until(failed.id, 'not-done');
    expect((await measure(server, failed.id)).status).toBe(202);
    await server.until(failed.id, 'not-done');
    const first = await server.comparison('stone.png');
    const measured = await server.until(first.id, 'measured');
    expect((await measure(server, first.id)).status).toBe(202);
    expect((await server.until(first.id, 'measured')).record).toEqual(measured.record);
  });

  it('does not measure twice what has the same photographs and parameters', async () => {
    const dataFolder = await folderUnderTest();
    const server = await serverUnderTest({ dataFolder });
    const { id, request } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    await server.stop();
    // a module that is not there would fail everything that is really measured
    const next = await serverUnderTest({
      dataFolder,
      measuringModule: new URL('./gone.ts', import.meta.url),
    });
    const send = async (body: object) => {
      const headers = { 'content-type': 'application/json' };
      const init = { method: 'POST', headers, body: JSON.stringify(body) };
      const { id } = await next.json<ComparisonEntry>('/api/comparisons', init);
      return (await next.until(id, 'measured', 'not-done')).state;
    };
    expect(await send({ ...request, title: 'another title' })).toBe('measured');
    expect(await send({ ...request, sizeMm: [300, 401] })).toBe('not-done');
  });

  it('goes on at the next start with what was waiting or being measured', async () => {
    const dataFolder = await folderUnderTest();
    const server = await serverUnderTest({ dataFolder });
    const running = await server.comparison('slow.png');
    const waiting = await server.comparison('stone.png');
    await server.until(running.id, 'measuring');
    await server.stop();
    const next = await serverUnderTest({ dataFolder });
    await next.until(running.id, 'measuring');
    await stop(next, running.id);
    await next.until(waiting.id, 'measured');
  });

  it('tries once more what the end of the program cut short, but not for ever', async () => {
    const dataFolder = await folderUnderTest();
    const server = await serverUnderTest({ dataFolder });
    const { id } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    await server.stop();
    // as a program leaves it that was killed in the middle
    const interrupt = async (interruptions: number) => {
      const store = await openStore(dataFolder);
      if (!store.ok) throw new Error(store.error.message);
      await store.value.comparisons.move(id, ['measured'], { to: 'measuring', interruptions });
      await store.value.close();
    };
    await interrupt(0);
    const second = await serverUnderTest({ dataFolder });
    await second.until(id, 'measured');
    await second.stop();
    await interrupt(1);
    const third = await serverUnderTest({ dataFolder });
    expect((await third.until(id, 'not-done')).failure?.code).toBe('measuring-crashed');
  });
});

describe('a result', () => {
  it('can be had file by file and whole', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('stone.png');
    expect((await server.call(`/api/comparisons/${id}/download`)).status).toBe(404);
    await server.until(id, 'measured');
    const ladder = await server.call(`/api/comparisons/${id}/files/ladder.svg`);
    expect(ladder.headers.get('content-type')).toBe('image/svg+xml');
    expect(ladder.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(await ladder.text()).toContain('<svg');
    const record = await server.json<{ verdict: string }>(`/api/comparisons/${id}/files/comparison.json`);
    expect(record.verdict).toBe('ok');
    const picture = `/api/comparisons/${id}/files/stone.png`;
    const whole = Buffer.from(await (await server.call(picture)).arrayBuffer());
    for (const width of [1, 240, 1920]) {
      const copy = await server.call(`${picture}?width=${width}`);
      const decoded = await decodePhotograph(new Uint8Array(await copy.arrayBuffer()), 'copy');
      expect(decoded.ok && decoded.value.widthPx).toBe(64);
    }
    const unscaled = await server.call(`${picture}?width=5000`);
    expect(Buffer.from(await unscaled.arrayBuffer())).toEqual(whole);
    const tag = unscaled.headers.get('etag')!;
    expect((await server.call(picture, { headers: { 'if-none-match': tag } })).status).toBe(304);
    const archive = await server.call(`/api/comparisons/${id}/download`);
    expect(archive.headers.get('content-disposition')).toContain('.zip');
    const files = unzipSync(new Uint8Array(await archive.arrayBuffer()));
    expect(Object.keys(files).sort()).toEqual(['comparison.json', 'ladder.svg', 'stone.png']);
    expect(JSON.parse(Buffer.from(files['comparison.json']!).toString())).toEqual(record);
  });
});

describe('the photograph protocol', () => {
  it('is a PDF, the same each time', async () => {
    const server = await serverUnderTest();
    const first = await server.call('/api/protocol.pdf');
    expect(first.headers.get('content-type')).toBe('application/pdf');
    const bytes = Buffer.from(await first.arrayBuffer());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.from(await (await server.call('/api/protocol.pdf')).arrayBuffer())).toEqual(bytes);
  });
});

describe('the sample', () => {
  it('lies measured in a fresh data folder, once, and stays away once removed', async () => {
    const dataFolder = await folderUnderTest();
    const sample = async () => ({
      title: 'Low Water',
      sizeMm: [300, 400] as const,
      stone: { fileName: 'stone.png', bytes: await aPicture(1), corners: null },
      proof: { fileName: 'print.png', bytes: await aPicture(2), corners: null },
      zones: [],
      chips: [],
      record: aRecord('ok', [300, 400]),
      files: new Map([['ladder.svg', Buffer.from('<svg/>')]]),
    });
    const list = (server: ServerUnderTest) =>
      server
        .json<{ comparisons: ComparisonEntry[] }>('/api/comparisons')
        .then(({ comparisons }) => comparisons);
    const first = await serverUnderTest({ dataFolder, sample });
    const [placed] = await list(first);
    expect(placed).toMatchObject({ title: 'Low Water', state: 'measured', sample: true });
    const entry = await first.json<ComparisonEntry>(`/api/comparisons/${placed!.id}`);
    expect(entry.files).toEqual(['comparison.json', 'ladder.svg']);
    expect((await first.call(`/api/photographs/${entry.request.stone.photograph}/preview.jpg`)).status).toBe(
      200,
    );
    await first.stop();
    const second = await serverUnderTest({ dataFolder, sample });
    expect(await list(second)).toHaveLength(1);
    await second.call(`/api/comparisons/${placed!.id}`, { method: 'DELETE' });
    await second.stop();
    const third = await serverUnderTest({ dataFolder, sample });
    expect(await list(third)).toEqual([]);
  });

  it('that cannot be had does not keep the program from starting', async () => {
    const told = vi.spyOn(console, 'error').mockImplementation(() => {});
    onTestFinished(() => told.mockRestore());
    const sample = () => Promise.reject(new Error('no such folder'));
    const server = await serverUnderTest({ sample });
    expect((await server.call('/api/comparisons')).status).toBe(200);
    expect(told).toHaveBeenCalledWith(expect.stringContaining('no such folder'));
  });
});
