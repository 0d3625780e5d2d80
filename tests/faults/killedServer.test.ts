import { once } from 'node:events';
import { readdir } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { ComparisonEntry, PhotographEntry } from '../../src/records/comparisonEntry.ts';
import { aPicture, folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';
import { killServer, serveInProcess } from './serverProcess.ts';

it('killed in the middle of an upload leaves nothing half-made', async () => {
  const dataFolder = await folderUnderTest();
  const { server, address } = await serveInProcess(dataFolder);
  const { port, host } = new URL(address);
  const socket = connect(Number(port), '127.0.0.1');
  socket.on('error', () => {});
  await once(socket, 'connect');
  socket.write(
    `POST /api/photographs HTTP/1.1\r\nhost: ${host}\r\ncontent-type: multipart/form-data; boundary=edge\r\n` +
      'content-length: 100000\r\n\r\n--edge\r\ncontent-disposition: form-data; name="photograph"; filename="a.png"\r\n\r\n',
  );
  socket.write(Buffer.from(await aPicture()));
  const incoming = join(dataFolder, 'incoming');
  while ((await readdir(incoming)).length === 0) await new Promise((resolve) => setTimeout(resolve, 5));
  await killServer(server);
  socket.destroy();
  const next = await serverUnderTest({ dataFolder });
  for (const place of ['incoming', 'photographs', 'cache']) {
    expect(await readdir(join(dataFolder, place)), place).toEqual([]);
  }
  expect((await next.upload('a.png', await aPicture())).status).toBe(201);
});

it('killed while measuring has lost nothing that it had acknowledged, and goes on', async () => {
  const dataFolder = await folderUnderTest();
  const { server, address } = await serveInProcess(dataFolder);
  const send = async <T>(path: string, init: RequestInit): Promise<T> =>
    (await (await fetch(address + path, init)).json()) as T;
  const photograph = async (name: string, shade: number) => {
    const form = new FormData();
    form.append('photograph', new Blob([(await aPicture(shade)) as Uint8Array<ArrayBuffer>]), name);
    return (await send<PhotographEntry>('/api/photographs', { method: 'POST', body: form })).id;
  };
  const slow = await photograph('slow.png', 1);
  const proof = await photograph('print.png', 2);
  const created: string[] = [];
  for (let index = 0; index < 20; index += 1) {
    const request = {
      title: `pull ${index}`,
      sizeMm: [300, 400 + index],
      stone: { photograph: slow },
      proof: { photograph: proof },
    };
    created.push((await send<ComparisonEntry>('/api/comparisons', postJson(request))).id);
  }
  await killServer(server);
  const next = await serverUnderTest({ dataFolder });
  const { comparisons } = await next.json<{ comparisons: ComparisonEntry[] }>('/api/comparisons?limit=200');
  expect(comparisons.map(({ id }) => id)).toEqual(created.toReversed());
  await next.until(created[0]!, 'measuring');
});
