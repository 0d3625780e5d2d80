import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { dragMarks, mark, markAt } from './corners.ts';
import { dropOn, pasteFile } from './givenFiles.ts';
import { describeInBrowser } from './pages.ts';
import { keptPair } from './pair.ts';

const pair = keptPair('measured');

describeInBrowser('a new comparison by mouse', (pages) => {
  it('goes from two photographs to a finding, over a measurement that was stopped', async () => {
    const page = await pages.atDesk('/comparisons');
    await page.getByRole('link', { name: 'Compare a print' }).click();

    await page.getByRole('heading', { name: 'One photograph of the stone, one of the print' }).waitFor();
    const on = page.getByRole('button', { name: 'Set the corners' });
    expect(await on.isDisabled()).toBe(true);
    await pasteFile(page, pair.stone);
    await page.getByRole('img', { name: /The drawn stone: measured-stone/ }).waitFor();
    await dropOn(page.getByRole('region', { name: 'A print from it' }), pair.print);
    await page.getByRole('img', { name: /A print from it: measured-print/ }).waitFor();
    await on.click();

    await page.getByRole('heading', { name: 'Set four marks on the stone' }).waitFor();
    await dragMarks(page, pair.stoneCorners);
    await expectMarksNear(page, pair.stoneCorners);
    await expectLoupeAndKeysMove(page);
    await page.getByRole('button', { name: 'Now the print' }).click();

    await page.getByRole('heading', { name: 'Set the same four marks on the print' }).waitFor();
    await dragMarks(page, pair.printCorners);
    await expectMarksNear(page, pair.printCorners);
    await page.getByRole('button', { name: 'Now the size' }).click();

    await page.getByLabel('Width').fill('400');
    await page.getByLabel('Height').fill('300');
    await page.getByLabel('Title').fill('S-02 Washes, pull 1');
    await page.getByLabel('Add: Zones of the drawing').setInputFiles(pair.zones);
    await page.getByText('measured-zones.json, 10 zones').waitFor();
    await page.getByLabel('Add: Grey chips').setInputFiles(pair.chips);
    await page.getByText('measured-chips.json, 12 chips').waitFor();
    await expectFurtherPhotographsHeld(page);
    // All that was entered outlives a reload.
    await page.reload();
    expect(await page.getByLabel('Width').inputValue()).toBe('400');
    await page.getByText('measured-zones.json, 10 zones').waitFor();
    await page.getByRole('button', { name: 'Measure' }).click();

    await page.getByRole('heading', { name: /Being measured|Waiting for its turn/ }).waitFor();
    await page.getByRole('button', { name: 'Stop the measurement' }).click();
    await page.getByRole('heading', { name: 'Stopped before it was measured' }).waitFor();
    await page.getByRole('button', { name: 'Measure again' }).click();
    await page.locator('[aria-current="step"]').waitFor({ timeout: 180_000 });
    await expectFinding(page);
  });
});

async function expectMarksNear(page: Page, corners: readonly (readonly [number, number])[]): Promise<void> {
  for (const [index, [x, y]] of corners.entries()) {
    const at = await markAt(page, index);
    // A mouse moves by whole px of the page, each about two of the photograph.
    expect(Math.hypot(at[0] - x, at[1] - y), `mark ${index + 1}`).toBeLessThan(4);
  }
}

async function expectLoupeAndKeysMove(page: Page): Promise<void> {
  const [x, y] = await markAt(page, 3);
  await mark(page, 3).press('ArrowRight');
  await page.getByRole('button', { name: 'Arrow keys push by 1 px' }).click();
  await mark(page, 3).press('ArrowUp');
  await mark(page, 3).press('0');
  await page.getByRole('button', { name: 'Arrow keys push by 1 px' }).waitFor();
  expect(await markAt(page, 3)).toEqual([x + 1, y - 10]);
  await mark(page, 3).press('+');
  await page.getByText('4 × full size,').waitFor();
  const loupe = (await page.getByRole('img', { name: 'The mark under a loupe' }).boundingBox())!;
  const middle = [loupe.x + loupe.width / 2, loupe.y + loupe.height / 2] as const;
  await page.mouse.move(...middle);
  await page.mouse.down();
  await page.mouse.move(middle[0] + 4, middle[1] - 40);
  await page.mouse.up();
  // The photograph was pushed right by 1 px and up by 10 under a loupe of 4 ×.
  expect(await markAt(page, 3)).toEqual([x, y]);
}

/** A second photograph and a white sheet can be added and left out again. */
async function expectFurtherPhotographsHeld(page: Page): Promise<void> {
  for (const title of ['The stone once more', 'White sheet in the print’s light']) {
    await page.getByLabel(`Add: ${title}`).setInputFiles(pair.stone);
    await page.getByRole('button', { name: `Leave out: ${title}` }).click();
    await page.getByLabel(`Add: ${title}`).waitFor({ state: 'attached' });
  }
}

async function expectFinding(page: Page): Promise<void> {
  await page.getByRole('slider', { name: 'Lift the print off the stone' }).waitFor({ timeout: 180_000 });
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/of 10 zones|zones held/);
  await page.getByText('S-02 Washes, pull 1').waitFor();
  expect(await page.locator('.zone-table tbody tr').count()).toBe(10);
  await page.getByRole('table', { name: /^Tone ladder, / }).waitFor();
  await page.getByText('Take it with you').click();
  const whole = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Everything in one file (ZIP)' }).click();
  expect((await whole).suggestedFilename()).toMatch(/\.zip$/);
}
