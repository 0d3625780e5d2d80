import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { seededRandom } from '../../src/foundation/random.ts';
import { openCodes } from '../../src/imaging/codecs/pictureLibrary.ts';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { postJson } from '../server/serverUnderTest.ts';
import { noteCopyingShare } from './copyingShare.ts';
import { openServer } from './openServer.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

/** A photograph of about a byte a pixel, unlike any of another seed. */
async function noisy(seed: number, widthPx = 120, heightPx = 80) {
  const random = seededRandom(seed);
  const codes = Uint8Array.from({ length: widthPx * heightPx }, () => Math.floor(random() * 256));
  const buffer = await openCodes(codes, widthPx, heightPx, 1).png().toBuffer();
  return { name: `held ${seed}.png`, mimeType: 'image/png', buffer };
}

async function aStudio() {
  const { server } = await openServer({ studio: sampleStudio() });
  const { address } = server;
  const read = async <T>(path: string, init?: RequestInit): Promise<T> =>
    (await (await fetch(address + path, init)).json()) as T;
  return { address, read };
}

const heldOn = (page: Page) => page.getByRole('list', { name: 'Photographs not sent yet' });

describeInBrowser('photographs of forms', (pages) => {
  it('taken without the network are held over a closed page, sent, and taken up where they belong', async () => {
    const { address, read } = await aStudio();
    const form = new FormData();
    const { buffer, name } = await noisy(30);
    form.append('photograph', new Blob([new Uint8Array(buffer)]), name);
    const shown = await read<{ id: string }>('/api/photographs', { method: 'POST', body: form });
    const pull = await read<PullEntry>(
      '/api/works/saltreach-low-water/pulls',
      postJson({ number: 31, paper: { words: 'rag 250' }, photographs: [{ photograph: shown.id }] }),
    );
    const stone = await read<TestStone>(
      '/api/test-stones',
      postJson({ name: 'T-31', sizeMm: [300, 200], stoneId: null, patches: [] }),
    );
    const again = `${address}/works/saltreach-low-water/proofs/${pull.id}/again`;
    const page = await pages.onPhone('/');
    await page.goto(`${address}/new`);
    const context = page.context();
    await page.getByRole('button', { name: 'Photograph it with the guide' }).first().waitFor();
    await context.setOffline(true);
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles(await noisy(31));
    await heldOn(page).getByText('Not sent yet: the stone of a new comparison').waitFor();
    await expectSoundScreen(page, 'a new comparison whose photograph waits');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/comparison-held.png` });

    await context.setOffline(false);
    await page.goto(`${address}/test-stones/${stone.id}/photographs`);
    await page.getByRole('button', { name: 'Photograph it with the guide' }).waitFor();
    await context.setOffline(true);
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles(await noisy(32));
    await heldOn(page).getByText('Not sent yet: the drawn stone T-31').waitFor();
    await context.setOffline(false);
    const drawn = async () => (await read<TestStone>(`/api/test-stones/${stone.id}`)).drawn;
    await expect.poll(drawn, { timeout: 60_000 }).not.toBeNull();

    await page.goto(again);
    await page.getByRole('button', { name: 'Photograph it with the guide' }).waitFor();
    await context.setOffline(true);
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles(await noisy(33));
    await heldOn(page).getByText('Not sent yet: pull', { exact: false }).waitFor();
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/reading-held.png` });
    await page.close();
    await context.setOffline(false);
    const next = await context.newPage();
    await next.goto(`${address}/`);
    await heldOn(next).getByText('Sent: pull', { exact: false }).waitFor();
    await next.goto(again);
    const marks = next.getByRole('heading', { name: 'Do the four marks sit right?' });
    await marks.waitFor();
    await next.getByText('a day', { exact: true }).click();
    await next.reload();
    await marks.waitFor();
    expect(await next.getByLabel('a day', { exact: true }).isChecked(), 'its other words too').toBe(true);
    await heldOn(next).waitFor({ state: 'detached' });

    await next.goto(`${address}/new`);
    await next.getByText('held 31.png', { exact: false }).waitFor();
  });

  it('go over a slow line in small pieces, say how far they are, and hold nobody else up', async () => {
    const { address, read } = await aStudio();
    const stones = (await read<{ stones: readonly { id: string }[] }>('/api/stones')).stones;
    const stone = stones[0]!.id;
    const before = (await read<StoneEntry>(`/api/stones/${stone}`)).photographs.length;
    const page = await pages.atDesk('/');
    await page.goto(`${address}/stones/${stone}`);
    const add = page.getByRole('region', { name: 'Photographs' }).locator('input[type=file]').first();
    await add.waitFor({ state: 'attached' });
    const sizes: number[] = [];
    page.on('request', (request) => {
      if (request.method() === 'PATCH') sizes.push(request.postDataBuffer()?.byteLength ?? 0);
    });
    const noted = await noteCopyingShare(page);
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 200,
      downloadThroughput: 40_000,
      uploadThroughput: 40_000,
    });
    await add.setInputFiles(await noisy(34, 700, 600));
    await expect.poll(() => sizes.length, { timeout: 60_000 }).toBeGreaterThan(0);
    expect((await read<{ stones: unknown[] }>('/api/stones')).stones.length).toBe(stones.length);
    await expect
      .poll(async () => (await read<StoneEntry>(`/api/stones/${stone}`)).photographs.length, {
        timeout: 120_000,
      })
      .toBe(before + 1);
    const shares = await noted();
    expect(new Set(shares).size, shares.join()).toBeGreaterThan(1);
    expect(sizes.length).toBeGreaterThan(1);
  });
});
