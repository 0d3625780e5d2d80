import { readdir, stat } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { openServices } from '../../src/application/openServices.ts';
import { sweepUploads } from '../../src/application/uploads/sweepUploads.ts';
import { createUploadAllowance } from '../../src/application/uploads/uploadAllowance.ts';
import { photographUploadSchema } from '../../src/contract/photographUpload.ts';
import type { PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { PhotographUpload } from '../../src/records/photographUpload.ts';
import { networkUnderTest } from './networkUnderTest.ts';
import {
  aPicture,
  folderUnderTest,
  postJson,
  type ServerUnderTest,
  serverUnderTest,
} from './serverUnderTest.ts';
import { pieceOf, startOf } from './uploadPieces.ts';

vi.setConfig({ testTimeout: 60_000 });

const post: RequestInit = { method: 'POST' };

async function refusal(response: Response): Promise<[number, string]> {
  return [response.status, ((await response.json()) as { code: string }).code];
}

/** Sends some bytes of a piece that is told to be longer, and breaks the connection once they are written down. */
async function cutOff(
  server: ServerUnderTest,
  { id, receivedBytes }: PhotographUpload,
  bytes: Uint8Array,
): Promise<void> {
  const { port, host } = new URL(server.address);
  const socket = connect(Number(port), '127.0.0.1');
  socket.on('error', () => {});
  const head =
    `PATCH /api/uploads/${id}?from=${receivedBytes} HTTP/1.1\r\nhost: ${host}\r\n` +
    'content-type: application/octet-stream\r\ncontent-length: 500000\r\n\r\n';
  await new Promise((resolve) => socket.write(Buffer.concat([Buffer.from(head), bytes]), resolve));
  const written = join(server.dataFolder, 'uploads', id, 'bytes');
  await expect
    .poll(async () => (await stat(written)).size, { timeout: 20_000 })
    .toBe(receivedBytes + bytes.byteLength);
  socket.destroy();
}

describe('a photograph in pieces', () => {
  it('is gone on with after breaks and a restart, and is the one that a form would have given', async () => {
    const first = await serverUnderTest();
    const picture = await aPicture(90, 500, 400);
    const begun = await first.call('/api/uploads', postJson(startOf(picture, 'C:\\stones\\low.png')));
    expect(begun.status).toBe(201);
    const upload = photographUploadSchema.parse(await begun.json());
    expect(upload).toMatchObject({ fileName: 'low.png', receivedBytes: 0, photograph: null });
    await cutOff(first, upload, picture.subarray(0, 100));
    const broken = await first.json<PhotographUpload>(`/api/uploads/${upload.id}`);
    expect(broken.receivedBytes).toBe(100);
    await first.json(`/api/uploads/${upload.id}?from=100`, pieceOf(picture.subarray(100, 300)));
    await first.stop();

    const next = await serverUnderTest({ dataFolder: first.dataFolder });
    const again = await next.call('/api/uploads', postJson(startOf(picture, 'low.png')));
    expect(again.status).toBe(200);
    expect(await again.json()).toMatchObject({ id: upload.id, receivedBytes: 300 });
    const finish = () => next.call(`/api/uploads/${upload.id}/photograph`, post);
    expect(await refusal(await finish())).toEqual([409, 'upload-unfinished']);
    const gap = await next.call(`/api/uploads/${upload.id}?from=100`, pieceOf(picture.subarray(100)));
    expect(await refusal(gap)).toEqual([409, 'upload-gap']);
    await next.json(`/api/uploads/${upload.id}?from=300`, pieceOf(picture.subarray(300)));
    const both = await Promise.all([finish(), finish()]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 201]);
    const [photograph, same] = (await Promise.all(both.map((answer) => answer.json()))) as PhotographEntry[];
    expect(same).toEqual(photograph);
    const byForm = await next.upload('other.png', picture);
    expect([byForm.status, await byForm.json()]).toEqual([200, photograph]);
    expect(await next.json(`/api/uploads/${upload.id}`)).toMatchObject({
      receivedBytes: picture.byteLength,
      photograph: photograph!.id,
    });
    expect(await readdir(join(next.dataFolder, 'uploads', upload.id))).toEqual(['upload.json']);
    expect(await readdir(join(next.dataFolder, 'incoming'))).toEqual([]);
  });

  it('whose sender came back over a new connection is not held by the old one', async () => {
    const server = await serverUnderTest();
    const picture = await aPicture(91, 500, 400);
    const upload = await server.json<PhotographUpload>('/api/uploads', postJson(startOf(picture)));
    const { port, host } = new URL(server.address);
    const hanging = connect(Number(port), '127.0.0.1');
    onTestFinished(() => void hanging.destroy());
    const closed = new Promise((resolve) => hanging.once('close', resolve));
    hanging.on('error', () => {});
    const head = `PATCH /api/uploads/${upload.id}?from=0 HTTP/1.1\r\nhost: ${host}\r\ncontent-type: application/octet-stream\r\ncontent-length: 400\r\n\r\n`;
    hanging.write(Buffer.concat([Buffer.from(head), picture.subarray(0, 50)]));
    const bytes = join(server.dataFolder, 'uploads', upload.id, 'bytes');
    await expect.poll(async () => (await stat(bytes)).size, { timeout: 20_000 }).toBe(50);
    expect(await server.json(`/api/uploads/${upload.id}`)).toMatchObject({ receivedBytes: 50 });
    await closed;
    await server.json(`/api/uploads/${upload.id}?from=50`, pieceOf(picture.subarray(50)));
    expect((await server.call(`/api/uploads/${upload.id}/photograph`, post)).status).toBe(201);
  });

  it('that is no good is refused, and leaves nothing', async () => {
    const server = await serverUnderTest({ largestBytes: 200_000 });
    const uploads = () => readdir(join(server.dataFolder, 'uploads'));
    const begin = (body: object) => server.call('/api/uploads', postJson(body));
    const picture = await aPicture();
    const start = startOf(picture);
    expect(await refusal(await begin({ ...start, byteCount: 200_001 }))).toEqual([413, 'upload-too-large']);
    for (const wrong of [{ byteCount: 0 }, { byteCount: 1.5 }, { sha256: 'abc' }, { fileName: 7 }])
      expect(await refusal(await begin({ ...start, ...wrong }))).toEqual([400, 'body-malformed']);
    expect(await uploads()).toEqual([]);

    const { id } = (await (await begin({ ...start, sha256: 'a'.repeat(64) })).json()) as PhotographUpload;
    const path = `/api/uploads/${id}`;
    expect(await refusal(await server.call(`${path}?from=0`, { method: 'PATCH' }))).toEqual([
      400,
      'body-malformed',
    ]);
    const json = { ...postJson({}), method: 'PATCH' };
    expect(await refusal(await server.call(`${path}?from=0`, json))).toEqual([400, 'body-malformed']);
    const long = new Uint8Array(picture.byteLength + 1);
    expect(await refusal(await server.call(`${path}?from=0`, pieceOf(long)))).toEqual([
      400,
      'upload-malformed',
    ]);
    await server.json(`${path}?from=0`, pieceOf(picture));
    expect(await refusal(await server.call(`${path}/photograph`, post))).toEqual([422, 'upload-differs']);
    expect(await refusal(await server.call(path))).toEqual([404, 'not-found']);

    const text = new TextEncoder().encode('certainly no picture');
    const other = (await (await begin(startOf(text))).json()) as PhotographUpload;
    await server.json(`/api/uploads/${other.id}?from=0`, pieceOf(text));
    expect(await refusal(await server.call(`/api/uploads/${other.id}/photograph`, post))).toEqual([
      415,
      'picture-unknown-kind',
    ]);
    const given = (await (await begin(start)).json()) as PhotographUpload;
    expect((await server.call(`/api/uploads/${given.id}`, { method: 'DELETE' })).status).toBe(204);
    expect(await refusal(await server.call(`/api/uploads/${given.id}`, { method: 'DELETE' }))).toEqual([
      404,
      'not-found',
    ]);
    expect(await uploads()).toEqual([]);
    expect(await readdir(join(server.dataFolder, 'photographs'))).toEqual([]);
  });
});

describe('what a device may send', () => {
  const start = (n: number) => ({
    fileName: 'a.jpg',
    byteCount: 100,
    sha256: n.toString(16).padStart(64, '0'),
  });

  it('is its own, ends after a day, and is not begun without end', async () => {
    const { ask, here, phone, clock, services } = await networkUnderTest();
    const [one, other] = [await phone(), await phone()];
    const begin = (n: number, { cookie } = one) =>
      ask('/api/uploads', { method: 'POST', cookie, body: start(n) });
    const { id } = (await begin(1)).json;
    expect((await ask(`/api/uploads/${id}`, { cookie: one.cookie })).status).toBe(200);
    for (const method of ['GET', 'DELETE'] as const)
      expect((await ask(`/api/uploads/${id}`, { method, cookie: other.cookie })).status).toBe(404);
    expect((await here(`/api/uploads/${id}`)).status).toBe(404);
    expect((await begin(1, other)).json.id).not.toBe(id);
    for (let n = 2; n <= 20; n++) expect((await begin(n)).status).toBe(201);
    expect((await begin(21)).json.code).toBe('uploads-unfinished');
    for (let n = 1; n <= 21; n++)
      expect((await here('/api/uploads', { method: 'POST', body: start(n) })).status).toBe(201);
    expect((await begin(20)).status, 'one that is begun is found').toBe(200);
    expect((await begin(21, other)).status).toBe(201);
    clock.now += 86_400_000;
    expect((await ask(`/api/uploads/${id}`, { cookie: one.cookie })).status).toBe(404);
    await sweepUploads(services);
    expect(await services.store.uploadFiles.all()).toEqual([]);
    expect((await begin(21)).status).toBe(201);
  });

  it('has an end each day, told in a sentence; this machine sends what it likes', async () => {
    let now = Date.parse('2026-03-04T09:00:00Z');
    const allowance = createUploadAllowance(() => new Date(now), { photographs: 3, bytes: 1000 });
    const take = (bytes: number, device: string | null = 'phone') => allowance.take(device, bytes);
    expect([take(400), take(600), take(1)].map(({ ok }) => ok)).toEqual([true, true, false]);
    expect(take(900, 'other').ok).toBe(true);
    expect(take(1e9, null).ok).toBe(true);
    now += 86_400_000;
    const results = [take(1), take(1), take(1), take(1)];
    expect(results.map(({ ok }) => ok)).toEqual([true, true, true, false]);
    expect(results[3]).toMatchObject({
      error: { message: expect.stringContaining('3 photographs'), remedy: expect.stringContaining('hours') },
    });
  });

  it('counts forms and pieces alike', async () => {
    const opened = await openServices({
      dataFolder: await folderUnderTest(),
      largestBytes: 1e6,
      dailyUploads: { photographs: 1, bytes: 1e6 },
    });
    if (!opened.ok) throw new Error(opened.error.message);
    const { ask, phone } = await networkUnderTest({ services: opened.value });
    const { cookie } = await phone();
    const form =
      '--edge\r\ncontent-disposition: form-data; name="photograph"; filename="a.png"\r\n\r\nx\r\n--edge--\r\n';
    const send = () =>
      ask('/api/photographs', {
        method: 'POST',
        cookie,
        text: form,
        headers: { 'content-type': 'multipart/form-data; boundary=edge' },
      });
    expect((await send()).json.code).toBe('picture-unknown-kind');
    expect([(await send()).status, (await send()).json.code]).toEqual([429, 'uploads-too-many']);
    expect((await ask('/api/uploads', { method: 'POST', cookie, body: start(1) })).json.code).toBe(
      'uploads-too-many',
    );
  });
});
