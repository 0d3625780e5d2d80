import { chromium } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { ownAddresses } from '../../src/server/network/ownAddresses.ts';
import { aPicture, folderUnderTest, postJson } from '../server/serverUnderTest.ts';
import { chromiumPath } from './chromium.ts';
import { openServer } from './openServer.ts';
import { phone } from './pages.ts';

// a phone that trusts the certificate is stood in for by a browser that minds none
const args = ['--no-sandbox', '--ignore-certificate-errors'];

describe.skipIf(chromiumPath === null || ownAddresses().length === 0)('a phone over https', () => {
  it('may install the screens, keeps them, and opens them while the server is gone; its bench goes on there', async () => {
    const dataFolder = await folderUnderTest();
    const secure = { dataFolder, network: { certificate: 'self' } } as const;
    const { server, network } = await openServer({ ...secure, studio: sampleStudio() });
    const port = Number(new URL(server.address).port);
    const browser = await chromium.launch({ executablePath: chromiumPath!, args });
    onTestFinished(() => browser.close());
    const context = await browser.newContext({
      viewport: phone,
      ignoreHTTPSErrors: true,
      hasTouch: true,
      isMobile: true,
    });
    const hand = await context.newPage();
    hand.setDefaultTimeout(60_000);
    const asked = await fetch(`${server.address}/api/letting-in`, { method: 'POST' });
    const { code } = (await asked.json()) as { code: string };
    await hand.goto(`${network}/join#${code}`);
    await hand.getByRole('button', { name: 'Go to the stones' }).click();
    await hand.getByRole('navigation', { name: 'The pages of Stonetone' }).waitFor();
    const cookies = await context.cookies();
    expect(cookies).toMatchObject([
      { name: '__Host-stonetone', httpOnly: true, secure: true, sameSite: 'Strict' },
    ]);
    const manifest = await hand.evaluate(async () => {
      const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]')!;
      return (await fetch(link.href)).json();
    });
    expect(manifest).toMatchObject({ name: 'Stonetone', display: 'standalone' });
    const keptPaths = () =>
      hand.evaluate(async () => {
        await navigator.serviceWorker.ready;
        const names = await caches.keys();
        const keys = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
        return keys.flat().map(({ url }) => new URL(url).pathname);
      });
    const paths = await keptPaths();
    expect(paths).toContain('/');
    expect(paths.length).toBeGreaterThan(20);
    await hand.goto(`${network}/stones`);
    await hand.getByRole('heading', { level: 1 }).waitFor();
    expect((await keptPaths()).filter((path) => path.startsWith('/api'))).toEqual([]);

    // a stone at the bench, seen once while the server answered
    const posted = await fetch(`${server.address}/api/runs`, postJson({ workId: 'saltreach-neap' }));
    const run = (await posted.json()) as RunSummary;
    await hand.goto(`${network}/bench/${run.id}`);
    const trouble = hand.getByRole('button', { name: 'Trouble', exact: true });
    await trouble.click();
    await hand.getByRole('button', { name: /^Hold/ }).waitFor();
    await hand.waitForTimeout(1000);

    await server.stop();
    await hand.reload();
    await hand.getByText(/^Stonetone does not answer. This is as this device heard it last, /).waitFor();
    await trouble.click();
    await hand.getByText('1 not sent yet. Kept here, sent in order later: go on.').waitFor();
    await hand.locator('.bench-photograph input').setInputFiles({
      name: 'stone.png',
      mimeType: 'image/png',
      buffer: Buffer.from(await aPicture(70)),
    });
    const held = hand.getByRole('list', { name: 'Photographs not sent yet' });
    await held.getByText('Kept here, also when this page is closed').waitFor();
    await hand.reload();
    await hand.getByText('1 not sent yet').waitFor();
    await held.getByText('Not sent yet').waitFor();
    if (process.env.PICTURES)
      await hand.screenshot({ path: `${process.env.PICTURES}/bench-offline.png`, fullPage: true });

    await hand.goto(`${network}/phones`);
    await hand.getByRole('navigation', { name: 'The pages of Stonetone' }).waitFor();
    await hand.getByText('Stonetone does not answer').waitFor();
    if (process.env.PICTURES) await hand.screenshot({ path: `${process.env.PICTURES}/phone-offline.png` });

    const next = await openServer({ ...secure, port });
    await hand.goto(`${network}/bench/${run.id}`);
    await hand.getByText('All is sent and kept.').waitFor({ state: 'attached' });
    const read = async (path: string) => (await fetch(next.server.address + path)).json();
    const photographs = async () =>
      ((await read('/api/works/saltreach-neap')) as WorkEntry).photographs.length;
    await expect.poll(photographs).toBe(1);
    const { events } = (await read(`/api/runs/${run.id}/events`)) as { events: readonly RunEvent[] };
    expect(events.map(({ kind, device }) => `${kind} by ${device}`)).toEqual([
      'trouble by Phone 1',
      'trouble by Phone 1',
    ]);
    // shut out, it holds nothing of the room any more
    const { devices } = (await read('/api/devices')) as { devices: readonly { id: string }[] };
    await fetch(`${next.server.address}/api/devices/${devices[0]!.id}/shut-out`, { method: 'POST' });
    await hand.reload();
    await hand.getByRole('heading', { name: 'Type the code' }).waitFor();
    const answers = () =>
      hand.evaluate(
        () =>
          new Promise<number>((resolve) => {
            const opening = indexedDB.open('stonetone-held');
            opening.onsuccess = () => {
              const count = opening.result.transaction('answers').objectStore('answers').count();
              count.onsuccess = () => resolve(count.result);
            };
          }),
      );
    await expect.poll(answers).toBe(0);
  }, 100_000);
});
