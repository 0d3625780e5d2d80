import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { mark, markAt } from './corners.ts';
import { describeInBrowser } from './pages.ts';
import { keptPair } from './pair.ts';
import { reach, tabTo } from './tabTo.ts';

const pair = keptPair('measured');

describeInBrowser('the keyboard alone', (pages) => {
  it('completes a new comparison and lifts the print off', async () => {
    const page = await pages.atDesk('/comparisons');
    // Heard from the beginning: the browser asks its own way while nobody listens, and listening takes a while to start.
    page.on('filechooser', () => {});
    await tabTo(page, 'link', 'Compare a print');
    await page.keyboard.press('Enter');

    await page.getByRole('heading', { name: /^One photograph/ }).waitFor();
    await chooseByKey(page, 'Choose a photograph: The drawn stone', pair.stone);
    await page.getByRole('img', { name: /The drawn stone: measured-stone/ }).waitFor();
    await chooseByKey(page, 'Choose a photograph: A print from it', pair.print);
    await page.getByRole('img', { name: /A print from it: measured-print/ }).waitFor();
    await tabTo(page, 'button', 'Set the corners');
    await page.keyboard.press('Enter');

    await page.getByRole('heading', { name: 'Set four marks on the stone' }).waitFor();
    await pushMarks(page, pair.stoneCorners);
    await tabTo(page, 'button', 'Now the print');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Set the same four marks on the print' }).waitFor();
    await pushMarks(page, pair.printCorners);
    await tabTo(page, 'button', 'Now the size');
    await page.keyboard.press('Enter');

    await tabTo(page, 'textbox', 'Width');
    await page.keyboard.type('400');
    await tabTo(page, 'textbox', 'Height');
    await page.keyboard.type('300');
    await page.keyboard.press('Enter');

    const grip = page.getByRole('slider', { name: 'Lift the print off the stone' });
    await grip.waitFor({ timeout: 180_000 });
    await tabTo(page, 'slider', 'Lift the print off the stone');
    await page.keyboard.press('End');
    expect(await grip.getAttribute('aria-valuetext')).toBe('The print is off; the whole stone shows');
    await page.keyboard.press('Home');
    await page.keyboard.press('PageUp');
    expect(await grip.getAttribute('aria-valuetext')).toBe('The print is lifted 10 % from the left');
  });
});

async function chooseByKey(page: Page, label: string, path: string): Promise<void> {
  await reach(page, page.getByLabel(label), label);
  const chooser = page.waitForEvent('filechooser');
  await page.keyboard.press('Enter');
  await (await chooser).setFiles(path);
}

/** Brings each mark to its place by tens and ones. */
async function pushMarks(page: Page, corners: readonly (readonly [number, number])[]): Promise<void> {
  for (const [index, to] of corners.entries()) {
    await reach(page, mark(page, index), `mark ${index + 1}`);
    const at = await markAt(page, index);
    for (const [axis, [less, more]] of [
      [0, ['ArrowLeft', 'ArrowRight']],
      [1, ['ArrowUp', 'ArrowDown']],
    ] as const) {
      const way = Math.round(to[axis] - at[axis]);
      const key = way < 0 ? less : more;
      const [tens, ones] = [Math.floor(Math.abs(way) / 10), Math.abs(way) % 10];
      await page.keyboard.press('0');
      for (let pressed = 0; pressed < tens; pressed++) await page.keyboard.press(key);
      await page.keyboard.press('0');
      for (let pressed = 0; pressed < ones; pressed++) await page.keyboard.press(key);
    }
    const after = await markAt(page, index);
    expect(Math.hypot(after[0] - to[0], after[1] - to[1]), `mark ${index + 1}`).toBeLessThanOrEqual(2);
  }
}
