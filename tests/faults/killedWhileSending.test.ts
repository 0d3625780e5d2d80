import { expect, it, vi } from 'vitest';
import { seededRandom } from '../../src/foundation/random.ts';
import { openCodes } from '../../src/imaging/codecs/pictureLibrary.ts';
import type { PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { PhotographUpload } from '../../src/records/photographUpload.ts';
import { folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';
import { pieceOf, startOf } from '../server/uploadPieces.ts';
import { killServer, serveInProcess } from './serverProcess.ts';

vi.setConfig({ testTimeout: 120_000 });

const pieceBytes = 20_000;

it('killed while a photograph is sent in pieces, all that was acknowledged is there, and the rest makes it whole', async () => {
  const random = seededRandom(7);
  const codes = Uint8Array.from({ length: 700 * 600 }, () => Math.floor(random() * 256));
  const picture = new Uint8Array(await openCodes(codes, 700, 600, 1).png().toBuffer());
  const dataFolder = await folderUnderTest();
  const { server, address } = await serveInProcess(dataFolder);
  const begun = await fetch(`${address}/api/uploads`, postJson(startOf(picture)));
  const { id } = (await begun.json()) as PhotographUpload;
  let acknowledged = 0;
  let killed: Promise<void> | null = null;
  for (;;) {
    const piece = pieceOf(picture.subarray(acknowledged, acknowledged + pieceBytes));
    const sending = fetch(`${address}/api/uploads/${id}?from=${acknowledged}`, piece).catch(() => null);
    if (acknowledged >= picture.byteLength / 2) killed ??= killServer(server);
    const answer = await sending;
    if (answer?.status !== 200) break;
    const upload = (await answer.json().catch(() => null)) as PhotographUpload | null;
    if (upload === null) break;
    acknowledged = upload.receivedBytes;
  }
  await killed;
  expect(acknowledged).toBeGreaterThan(0);

  const next = await serverUnderTest({ dataFolder });
  const again = await next.json<PhotographUpload>('/api/uploads', postJson(startOf(picture)));
  expect(again.id).toBe(id);
  expect(again.receivedBytes).toBeGreaterThanOrEqual(acknowledged);
  expect(again.receivedBytes).toBeLessThan(picture.byteLength);
  await next.json(
    `/api/uploads/${id}?from=${again.receivedBytes}`,
    pieceOf(picture.subarray(again.receivedBytes)),
  );
  const whole = await next.json<PhotographEntry>(`/api/uploads/${id}/photograph`, { method: 'POST' });
  expect(await (await next.upload('same.png', picture)).json()).toEqual(whole);
});
