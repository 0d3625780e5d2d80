import type { Page } from 'playwright-core';
import { it } from 'vitest';
import { mark } from './corners.ts';
import { describeInBrowser } from './pages.ts';
import { enteredComparison, keptPair } from './pair.ts';
import { expectSoundScreen } from './screenRules.ts';

const pair = keptPair('measured');

describeInBrowser('the screens of comparisons, each at a desk and on a phone', (pages) => {
  it('list, result, nothing there', async () => {
    const page = await pages.atDesk('/comparisons');
    await page.getByRole('link', { name: /Low Water/ }).waitFor();
    await expectSoundScreen(page, 'list');
    await page.getByRole('link', { name: /Low Water/ }).click();
    await page.getByRole('slider').waitFor();
    for (const fold of await page.locator('summary').all()) await fold.click();
    await page.locator('.zone-table button').first().click();
    await expectSoundScreen(page, 'result');
    await goTo(page, '/comparisons/0000');
    await page.getByRole('heading', { name: 'There is nothing at this address' }).waitFor();
    await page.getByRole('link', { name: 'To the comparisons', exact: true }).waitFor();
    await expectSoundScreen(page, 'nothing there');
  });

  it('each step of a new one', async () => {
    const page = await pages.atDesk('/new');
    await page.getByRole('heading', { name: /^One photograph/ }).waitFor();
    await page.getByLabel('Choose a photograph: The drawn stone').setInputFiles({
      name: 'a file with a name as long as a telephone gives at times 20261125_221500.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.alloc(0),
    });
    await page.getByRole('alert').waitFor();
    await expectSoundScreen(page, 'photographs');
    await page.getByLabel('Choose a photograph: The drawn stone').setInputFiles(pair.stone);
    await page.getByRole('img', { name: /^The drawn stone/ }).waitFor();
    await page.getByLabel('Choose a photograph: A print from it').setInputFiles(pair.print);
    await page.getByRole('img', { name: /^A print from it/ }).waitFor();
    await page.getByRole('button', { name: 'Set the corners' }).click();
    await mark(page, 0).waitFor();
    await expectSoundScreen(page, 'corners of the stone');
    await page.getByRole('button', { name: 'Now the print' }).click();
    await page.getByRole('heading', { name: 'Set the same four marks on the print' }).waitFor();
    await mark(page, 0).waitFor();
    await expectSoundScreen(page, 'corners of the print');
    await page.getByRole('button', { name: 'Now the size' }).click();
    await page.getByLabel('Width').fill('40o');
    await page.getByLabel('Add: Zones of the drawing').setInputFiles(pair.zones);
    await page.getByText('measured-zones.json, 10 zones').waitFor();
    await expectSoundScreen(page, 'size');
  });

  it('being measured, stopped, deleted', async () => {
    // A size that no other check uses: nothing is known of it, so that it is measured and not looked up.
    const { id } = await enteredComparison(
      'S-02 Washes, to be stopped',
      { ...pair, sizeMm: [404, 303] },
      pair,
    );
    const page = await pages.atDesk(`/comparisons/${id}`);
    await page.getByRole('button', { name: 'Stop the measurement' }).waitFor();
    await expectSoundScreen(page, 'being measured');
    await page.getByRole('button', { name: 'Stop the measurement' }).click();
    await page.getByRole('heading', { name: 'Stopped before it was measured' }).waitFor();
    await expectSoundScreen(page, 'stopped');
    await page.getByRole('button', { name: 'Throw this comparison away' }).click();
    await page.getByRole('dialog').waitFor();
    await expectSoundScreen(page, 'asking before it is thrown away');
    await page.getByRole('button', { name: 'Throw it away' }).click();
    await page.getByRole('heading', { name: 'What printed, against what was drawn' }).waitFor();
    await page.getByText('S-02 Washes, to be stopped').waitFor({ state: 'detached' });
  });
});

async function goTo(page: Page, path: string): Promise<void> {
  await page.goto(new URL(path, page.url()).href);
}
