import { chromium } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import { ownAddresses } from '../../src/server/network/ownAddresses.ts';
import { chromiumPath } from './chromium.ts';
import { openServer } from './openServer.ts';
import { phone } from './pages.ts';

// a phone that trusts the certificate is stood in for by a browser that minds none
const args = ['--no-sandbox', '--ignore-certificate-errors'];

describe.skipIf(chromiumPath === null || ownAddresses().length === 0)('a phone over https', () => {
  it('may install the screens, keeps them, and opens them while the server is gone; of the room it keeps nothing', async () => {
    const { server, network } = await openServer({ network: { certificate: 'self' } });
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
    const asked = await fetch(`${server.address}/api/pairing`, { method: 'POST' });
    const { code } = (await asked.json()) as { code: string };
    await hand.goto(`${network}/join#${code}`);
    await hand.getByRole('button', { name: 'Go to the stones' }).click();
    await hand.getByRole('navigation', { name: 'Rooms' }).waitFor();
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

    await server.stop();
    await hand.goto(`${network}/phones`);
    await hand.getByRole('navigation', { name: 'Rooms' }).waitFor();
    await hand.getByText('Stonetone does not answer').waitFor();
    if (process.env.PICTURES) await hand.screenshot({ path: `${process.env.PICTURES}/phone-offline.png` });
  }, 100_000);
});
