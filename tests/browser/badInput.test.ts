import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { dragMarks, mark, markAt, onPage } from './corners.ts';
import { describeInBrowser } from './pages.ts';
import { enteredComparison, keptPair } from './pair.ts';

const measured = keptPair('measured');
const unmirrored = keptPair('wrong-way-round');

describeInBrowser('bad input', (pages) => {
  const folder = mkdtempSync(join(tmpdir(), 'stonetone-bad-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const written = (name: string, content: string) => {
    const path = join(folder, name);
    writeFileSync(path, content);
    return path;
  };

  it('is answered with one clear sentence where it was given', async () => {
    const page = await pages.atDesk('/new');
    await page.getByLabel('Choose a photograph: The drawn stone').setInputFiles(written('empty.jpg', ''));
    await expectTrouble(page, 'The drawn stone', /The file empty\.jpg is empty\. Copy the photograph again/);
    await page
      .getByLabel('Choose a photograph: A print from it')
      .setInputFiles(written('words.jpg', 'no picture'));
    await expectTrouble(page, 'A print from it', /words\.jpg is not a picture that can be read here/);
    expect(await page.getByRole('button', { name: 'Set the corners' }).isDisabled()).toBe(true);

    await page.getByLabel('Choose a photograph: The drawn stone').setInputFiles(measured.stone);
    await page.getByRole('img', { name: /^The drawn stone/ }).waitFor();
    await page.getByLabel('Choose a photograph: A print from it').setInputFiles(measured.print);
    await page.getByRole('img', { name: /^A print from it/ }).waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    await page.getByRole('button', { name: 'Set the corners' }).click();

    await mark(page, 0).waitFor();
    await crossMarks(page);
    await page.getByRole('alert').filter({ hasText: 'The sides cross.' }).waitFor();
    expect(await page.getByRole('button', { name: 'Now the print' }).isDisabled()).toBe(true);
    // By way of the steps one may go on, but not measure.
    await page.getByRole('link', { name: 'on the print' }).click();
    await page.getByRole('heading', { name: 'Set the same four marks on the print' }).waitFor();
    await mark(page, 0).waitFor();
    await page.getByRole('link', { name: 'the size' }).click();
    await page.getByLabel('Width').fill('4');
    await page.getByText('A number from 10 to 3000.').waitFor();
    await page.getByLabel('Width').fill('400');
    await page.getByLabel('Height').fill('900');
    await page.getByLabel('Add: Zones of the drawing').setInputFiles(written('zones.json', 'sky: A'));
    await page.getByRole('alert').filter({ hasText: 'This file is not JSON.' }).waitFor();
    expect(await page.getByRole('button', { name: 'Measure' }).isDisabled()).toBe(true);
    await page.getByRole('link', { name: 'Set the four marks on the stone first' }).click();
    await page.getByRole('heading', { name: 'Set four marks on the stone' }).waitFor();
    await dragMarks(page, measured.stoneCorners);
    await page.getByRole('link', { name: 'the size' }).click();
    await page.getByText('The marks enclose something wider than this size.').waitFor();
    expect(await page.getByRole('button', { name: 'Measure' }).isEnabled()).toBe(true);
  });

  it('names a print that reads as its stone does, and one of another stone, and leads back to the marks', async () => {
    const turned = await enteredComparison('S-05 Reeds, flipped', unmirrored, unmirrored);
    const other = await enteredComparison('S-05 against a print of S-02', unmirrored, measured);
    const page = await pages.atDesk(`/comparisons/${turned.id}`);
    const refused = page.getByRole('heading', { name: /so nothing was measured/ });
    await refused.waitFor({ timeout: 180_000 });
    expect(await refused.textContent()).toMatch(/not the mirror image of this stone/);
    await page.getByRole('heading', { name: 'What to do' }).waitFor();
    await page.goto(page.url().replace(turned.id, other.id));
    await page
      .getByRole('heading', { name: /could not be matched to this stone/ })
      .waitFor({ timeout: 180_000 });
    await page.getByRole('button', { name: 'Set it up again' }).click();
    await page.getByRole('heading', { name: 'Set four marks on the stone' }).waitFor();
    await page.getByRole('link', { name: 'the size' }).click();
    expect(await page.getByLabel('Title').inputValue()).toBe('S-05 against a print of S-02');
  });
});

async function expectTrouble(page: Page, place: string, words: RegExp): Promise<void> {
  const alert = page.getByRole('region', { name: place }).getByRole('alert');
  await alert.waitFor();
  expect(await alert.textContent()).toMatch(words);
}

/** Carries mark 1 over the side between 2 and 3. */
async function crossMarks(page: Page): Promise<void> {
  const [x, y] = await markAt(page, 1);
  const from = await onPage(page, await markAt(page, 0));
  const to = await onPage(page, [x + 60, y + 120]);
  await page.mouse.move(...(from as [number, number]));
  await page.mouse.down();
  await page.mouse.move(...(to as [number, number]));
  await page.mouse.up();
}
