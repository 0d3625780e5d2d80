import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { enteredStone, keptStone } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';

/** The rooms, each by its first screen. */
const rooms = [
  '/',
  '/stones',
  '/works',
  '/week',
  '/comparisons',
  '/test-stones',
  '/tables/tannic',
  '/mixing/parts',
  '/reports',
  '/keeping',
  '/phones',
  '/materials',
];

async function chosen(page: Page, choice: object): Promise<void> {
  await page.evaluate((kept) => localStorage.setItem('stonetone.words', kept), JSON.stringify(choice));
}

describeInBrowser('another language', (pages) => {
  it('is chosen on a page, kept on the device, and spoken in every room', async () => {
    const page = await pages.atDesk('/words');
    await expectSoundScreen(page, 'the choice of words');
    await page.getByText('Deutsch', { exact: true }).click();
    await page.getByRole('button', { name: 'Use these' }).click();
    await page.getByRole('heading', { name: 'Sprache, Einheiten und Datum' }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    for (const room of rooms) {
      await page.goto(new URL(room, page.url()).href);
      await page.getByRole('link', { name: 'Regal', exact: true }).waitFor();
      await expectSoundScreen(page, `${room} in German`);
    }
    await page.goto(new URL('/mixing/parts?part=gum:1&part=water:1', page.url()).href);
    await page.getByLabel('Insgesamt').fill('75,5');
    await page.getByText('37,8').first().waitFor();
  });

  it('goes with inches, which leave what is kept as it was', async () => {
    const stone = await enteredStone('S-inch', { widthMm: 301.7, heightMm: 400 });
    const page = await pages.onPhone('/stones');
    await chosen(page, { language: 'de', units: 'inch', dates: 'de-DE' });
    await page.goto(new URL(`/stones/${stone.id}`, page.url()).href);
    await page.getByText('11,878 × 15,748 in').first().waitFor();
    await expectSoundScreen(page, 'a stone in inches');
    await page.getByText('Name, Größe, Ecken berichtigen').click();
    expect(await page.getByLabel('Breite').inputValue()).toBe('11,878');
    await page.getByLabel('Höhe').fill('16 1/2');
    await page.getByRole('button', { name: 'Den Stein speichern' }).click();
    await expect.poll(async () => (await keptStone(stone.id)).heightMm).toBe(419.1);
    expect((await keptStone(stone.id)).widthMm).toBe(301.7);
  });
});
