import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { seededRandom } from '../../src/foundation/random.ts';
import { openCodes } from '../../src/imaging/codecs/pictureLibrary.ts';
import type { Edition } from '../../src/records/edition.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, postJson } from '../server/serverUnderTest.ts';
import { noteCopyingShare } from './copyingShare.ts';
import { openCutLine } from './cutLine.ts';
import { openServer } from './openServer.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

/** A server that can be ended and started anew under the same address, with what it kept. */
async function aServer() {
  const dataFolder = await folderUnderTest();
  const first = await openServer({ dataFolder, studio: sampleStudio() });
  const { address } = first.server;
  const port = Number(new URL(address).port);
  const read = async <T>(path: string, init?: RequestInit): Promise<T> =>
    (await (await fetch(address + path, init)).json()) as T;
  return {
    address,
    dataFolder,
    read,
    stop: () => first.server.stop(),
    startAgain: () => openServer({ dataFolder, port }),
  };
}

/** Touches a target; another touch within half a second would count as a bounce. */
async function touch(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await page.waitForTimeout(560);
}

/** A photograph that hardly gets smaller by its coding, about a byte a pixel. */
async function noisyPicture(
  folder: string,
  widthPx: number,
  heightPx: number,
  seed: number,
): Promise<string> {
  const random = seededRandom(seed);
  const codes = Uint8Array.from({ length: widthPx * heightPx }, () => Math.floor(random() * 256));
  const path = join(folder, `stone ${seed}.png`);
  await writeFile(path, await openCodes(codes, widthPx, heightPx, 1).png().toBuffer());
  return path;
}

describeInBrowser('a line that drops', (pages) => {
  it('loses no tap and no photograph, sent in order and once, though the server ends before it answers and the page is closed', async () => {
    const server = await aServer();
    const entered = await server.read<Edition>(
      '/api/works/saltreach-low-water/editions',
      postJson({ title: 'Low Water', size: 5 }),
    );
    const page = await pages.onPhone('/');
    await page.goto(`${server.address}/editions/${entered.id}/press`);
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    // the server has the first print, and its answer gets lost as it ends
    let lost = false;
    await page.route('**/ledger', async (route) => {
      if (lost || route.request().method() !== 'POST') return route.continue();
      lost = true;
      await route.fetch();
      await server.stop();
      await route.abort();
    });
    await touch(page, 'Good');
    await page.getByText('1 not sent yet. Kept here, sent in order later: go on.').waitFor();
    await touch(page, 'Good');
    await touch(page, 'Slab charged');
    const picture = await noisyPicture(server.dataFolder, 300, 200, 1);
    const add = page.locator('.print-photograph input');
    await add.setInputFiles(picture);
    const held = page.getByRole('list', { name: 'Photographs not sent yet' });
    await held.getByText('Not sent yet: print 2').waitFor();
    await held.getByText('Kept here, also when this page is closed').waitFor();
    expect(await held.locator('img').evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(300);
    await page.getByText('3 not sent yet').waitFor();
    await expectSoundScreen(page, 'a press whose server is gone');
    if (process.env.PICTURES)
      await page.screenshot({ path: `${process.env.PICTURES}/press-held.png`, fullPage: true });

    const context = page.context();
    await page.close();
    await server.startAgain();
    const next = await context.newPage();
    await next.goto(`${server.address}/`);
    const entries = async () =>
      (await server.read<{ entries: readonly LedgerEntry[] }>(`/api/editions/${entered.id}/ledger`)).entries;
    await expect.poll(async () => (await entries()).length).toBe(4);
    await next.waitForTimeout(2500);
    const kept = await entries();
    expect(kept.map(({ kind }) => kind)).toEqual(['impression', 'impression', 'charged', 'photographed']);
    expect(kept[3]!.payload).toMatchObject({ impression: kept[1]!.clientId });
    await next.getByText('not sent yet').first().waitFor({ state: 'detached' });
    const left = await next.evaluate(
      () =>
        new Promise<number[]>((resolve) => {
          const opening = indexedDB.open('stonetone-held');
          opening.onsuccess = () => {
            const stores = ['taps', 'photographs'];
            const reading = opening.result.transaction(stores);
            const counts = stores.map((name) => reading.objectStore(name).count());
            reading.oncomplete = () => resolve(counts.map(({ result }) => result));
          };
        }),
    );
    expect(left, 'nothing lies in the browser any more').toEqual([0, 0]);
  });

  it('holds the photograph of a pull while the pull is entered further, and sends it by itself once the server is back', async () => {
    const server = await aServer();
    const page = await pages.onPhone('/');
    await page.goto(`${server.address}/works/saltreach-low-water/proofs/new`);
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    const asked = page.getByRole('heading', { name: /^Photograph pull/ });
    await asked.waitFor();
    await server.stop();
    const add = page.locator('input[type=file]').first();
    await add.setInputFiles(await noisyPicture(server.dataFolder, 300, 200, 4));
    await asked.waitFor({ state: 'detached' });
    await page.getByText('Its photograph is kept here and sent by itself.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    const held = page.getByRole('list', { name: 'Photographs not sent yet' });
    await held.getByText(/^Not sent yet: pull \d+ of Low Water$/).waitFor();
    await held.getByText('Stonetone does not answer.').waitFor();
    await expectSoundScreen(page, 'a photograph of a pull that waits');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/pull-held.png` });
    // taken once more: the first one is let go of
    await add.setInputFiles(await noisyPicture(server.dataFolder, 300, 200, 5));
    await asked.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await held.waitFor();
    expect(await held.getByRole('listitem').count()).toBe(1);
    await server.startAgain();
    await held.getByText(/^Sent: pull \d+ of Low Water$/).waitFor();
    await page.goto(`${server.address}/`);
    await held.getByText(/^Sent: pull \d+ of Low Water$/).waitFor();
    await expectSoundScreen(page, 'a rack with a photograph that waits for its pull');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/rack-held.png` });
    await held.getByRole('button', { name: 'Take it off this list' }).click();
    await held.waitFor({ state: 'detached' });
  });

  it('of what earlier screens left in the browser, all is sent once, in order', async () => {
    const server = await aServer();
    const run = await server.read<RunSummary>('/api/runs', postJson({ workId: 'saltreach-neap' }));
    const page = await pages.atDesk('/');
    await page.goto(`${server.address}/stones`);
    await page.evaluate((id) => {
      const event = (clientId: string) => ({
        clientId,
        kind: 'note',
        payload: { text: clientId },
        at: '2026-03-04T09:00:00Z',
        actor: null,
        device: 'old',
      });
      localStorage.setItem(`stonetone-unsent-${id}`, JSON.stringify(['one', 'two', 'three'].map(event)));
    }, run.id);
    await page.goto(`${server.address}/`);
    const events = async () =>
      (await server.read<{ events: readonly RunEvent[] }>(`/api/runs/${run.id}/events`)).events;
    await expect
      .poll(async () => (await events()).map(({ clientId }) => clientId))
      .toEqual(['one', 'two', 'three']);
    expect(await page.evaluate((id) => localStorage.getItem(`stonetone-unsent-${id}`), run.id)).toBeNull();
  });

  it('where the browser keeps nothing, says so, and sends from the open page', async () => {
    const server = await aServer();
    const run = await server.read<RunSummary>('/api/runs', postJson({ workId: 'saltreach-neap' }));
    const page = await pages.onPhone('/');
    await page.addInitScript(() => {
      indexedDB.open = () => {
        throw new DOMException('forbidden', 'SecurityError');
      };
    });
    await page.goto(`${server.address}/bench/${run.id}`);
    await page.getByRole('button', { name: 'Trouble', exact: true }).waitFor();
    await page.context().setOffline(true);
    await touch(page, 'Trouble');
    await page.getByText('1 not sent yet, and this browser can’t keep them: leave the page open.').waitFor();
    await page
      .locator('.bench-photograph input')
      .setInputFiles(await noisyPicture(server.dataFolder, 60, 40, 3));
    await page.getByText('This browser can’t keep it: leave the page open until it is sent.').waitFor();
    await page.context().setOffline(false);
    await page.getByText('All is sent and kept.').waitFor({ state: 'attached' });
    await expect
      .poll(
        async () =>
          (await server.read<{ photographs: unknown[] }>('/api/works/saltreach-neap')).photographs.length,
      )
      .toBe(1);
  });

  it('is gone on with by a large photograph: cut twice, it arrives whole and once', async () => {
    const server = await aServer();
    const line = await openCutLine(server.address);
    const { stones } = await server.read<{ stones: readonly { id: string }[] }>('/api/stones');
    const stone = stones[0]!.id;
    const picture = await noisyPicture(server.dataFolder, 2500, 2450, 2);
    const page = await pages.atDesk('/');
    await page.goto(`${line.address}/stones/${stone}`);
    const before = (await server.read<StoneEntry>(`/api/stones/${stone}`)).photographs.length;
    const noted = await noteCopyingShare(page);
    line.cutAfter(1_500_000, 2_500_000);
    await page
      .getByRole('region', { name: 'Photographs' })
      .locator('input[type=file]')
      .first()
      .setInputFiles(picture);
    await expect
      .poll(async () => (await server.read<StoneEntry>(`/api/stones/${stone}`)).photographs.length, {
        timeout: 60_000,
      })
      .toBe(before + 1);
    expect(line.cuts()).toBe(2);
    expect((await noted()).length).toBeGreaterThan(0);
  });
});
