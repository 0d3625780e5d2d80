import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { drawFinger } from './finger.ts';
import { describeInBrowser } from './pages.ts';

describeInBrowser('the print on its stone', (pages) => {
  it('is lifted, looked at closer, its marks hidden and its zones found', async () => {
    const page = await pages.atDesk('/comparisons');
    await openSample(page);
    const grip = page.getByRole('slider');
    const [x, y] = await middleOf(grip);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 200, y, { steps: 4 });
    await page.mouse.up();
    const after = await middleOf(grip);
    expect(Math.abs(after[0] - x - 200), 'the roll follows the hand').toBeLessThan(12);

    const shown = canvasOf(page);
    const whole = await shown();
    await page.getByRole('button', { name: 'Closer' }).click();
    await expect.poll(shown, { message: 'closer' }).not.toEqual(whole);
    await page.getByRole('button', { name: 'Whole' }).click();
    await expect.poll(shown, { message: 'whole again' }).toEqual(whole);
    await page.getByRole('button', { name: /^Filled in/ }).click();
    await expect.poll(shown, { message: 'without what filled in' }).not.toEqual(whole);
    await page.getByRole('button', { name: /^Filled in/ }).click();
    await expect.poll(shown, { message: 'with it again' }).toEqual(whole);

    await page.getByRole('button', { name: 'C Mudbank' }).click();
    await expect.poll(shown, { message: 'at the zone' }).not.toEqual(whole);
    expect(await page.getByRole('button', { name: 'C Mudbank' }).getAttribute('aria-pressed')).toBe('true');
    const picture = page.getByRole('group', { name: /^The stone with its print/ });
    await page.getByRole('button', { name: 'Whole' }).click();
    await picture.press('+');
    const closer = await shown();
    await picture.press('ArrowLeft');
    await expect.poll(shown, { message: 'pushed aside' }).not.toEqual(closer);
  });

  it('follows a finger on a phone', async () => {
    const page = await pages.onPhone('/comparisons');
    await openSample(page);
    const grip = page.getByRole('slider');
    await grip.scrollIntoViewIfNeeded();
    const [x, y] = await middleOf(grip);
    await drawFinger(page, [x, y], [x + 20, y], [x + 60, y], [x + 100, y]);
    expect(Math.abs((await middleOf(grip))[0] - x - 100)).toBeLessThan(12);
  });

  it('tells the tones of each medium, and the curve when asked', async () => {
    const page = await pages.atDesk('/comparisons');
    await openSample(page);
    await page
      .getByRole('table', { name: /^Tone ladder, crayon/ })
      .getByText(/lost below/)
      .waitFor();
    await page.getByText('wash', { exact: true }).click();
    const wash = page.getByRole('table', { name: /^Tone ladder, wash/ });
    await wash.waitFor();
    expect(await wash.getByText(/lost below/).count()).toBe(0);
    await page.getByText('No light of it is lost. No dark fills in.').waitFor();
    await page.getByText('The curve, for a second look').click();
    const curve = page.getByRole('img', { name: /^Tone curve/ });
    await expect
      .poll(() => curve.evaluate((picture: HTMLImageElement) => picture.naturalWidth))
      .toBeGreaterThan(0);
  });
});

async function openSample(page: Page): Promise<void> {
  await page.getByRole('link', { name: /Low Water, first trial proof/ }).click();
  await page.getByRole('slider', { name: 'Lift the print off the stone' }).waitFor();
}

async function middleOf(target: Locator): Promise<[number, number]> {
  const box = (await target.boundingBox())!;
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** What the picture shows, as numbers that change with it: the canvas in a few dozen cells. */
function canvasOf(page: Page): () => Promise<number[]> {
  return () =>
    page.locator('.lift-area canvas').evaluate((canvas: HTMLCanvasElement) => {
      const small = document.createElement('canvas');
      small.width = small.height = 12;
      const context = small.getContext('2d')!;
      context.drawImage(canvas, 0, 0, 12, 12);
      return [...context.getImageData(0, 0, 12, 12).data];
    });
}
