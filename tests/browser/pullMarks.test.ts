import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { Chip } from '../../src/records/zone.ts';
import { describeInBrowser, phone } from './pages.ts';
import { keptPair } from './pair.ts';
import { printedWork, pulled, sent, uploaded } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';

const pair = keptPair('measured');
const onPrint = (JSON.parse(readFileSync(pair.chips, 'utf8')) as Chip[]).filter(
  ({ photo }) => photo === 'proof',
);

describeInBrowser('the corners and grey chips of a pull', (pages) => {
  it('are set on a kept pull, which is then read by its chips; the next pull lays them where they were', async () => {
    const work = await printedWork('S-161');
    const photograph = await uploaded(pair.print);
    const shown = { photograph, takenAt: null, ageMinutes: 5, corners: pair.printCorners, chips: [] };
    const made = await pulled(work, 1, { photographs: [shown] });
    await measured(work.id, made.id);
    const page = await pages.atDesk(`/works/${work.id}/proofs/${made.id}`);
    await page.getByRole('link', { name: 'Corners and grey chips' }).click();
    await page.getByRole('heading', { name: 'Do the four marks sit right?' }).waitFor();
    const mark = page.getByRole('button', { name: /^Mark 1/ });
    await mark.focus();
    await page.keyboard.press('0');
    await page.keyboard.press('ArrowLeft');
    await page.getByRole('button', { name: 'Closer' }).click();
    await expectSoundScreen(page, 'the corners of a kept pull');
    await page.getByText('grey chips', { exact: true }).click();
    await page.getByRole('heading', { name: 'Where do the grey chips lie?' }).waitFor();
    for (const [index, { polygonPx, reflectance }] of onPrint.entries()) {
      await dragOver(page, polygonPx, index);
      await page.getByLabel(`Density of chip ${index + 1}`).fill((-Math.log10(reflectance)).toFixed(3));
    }
    await expectSoundScreen(page, 'grey chips on a pull');
    await page.getByRole('button', { name: 'One more in the row' }).click();
    const one = onPrint.length + 1;
    await page.getByText(`Chip ${one} has no density yet: type it, or take the chip away.`).waitFor();
    await page.getByRole('button', { name: new RegExp(`^Chip ${one},`) }).press('Delete');
    await page.getByRole('button', { name: 'Keep and read it again' }).click();
    await page.getByRole('link', { name: 'To the proofs' }).waitFor({ timeout: 180_000 });
    const kept = await measured(work.id, made.id);
    const [first] = kept.photographs;
    expect(first!.chips.map(({ reflectance }) => Number(reflectance.toFixed(2)))).toEqual(
      onPrint.map(({ reflectance }) => reflectance),
    );
    expect(first!.corners![0]![0]).toBeCloseTo(pair.printCorners[0]![0]! - 10, 1);
    expect(first!.measuring!.tones!.response!.origin).toBe('chips');

    await page.goto(new URL(`/works/${work.id}/proofs/new`, page.url()).href);
    await page.setViewportSize(phone);
    await page.getByRole('button', { name: 'Next' }).click();
    await page.locator('input[type=file]').setInputFiles(pair.print);
    await page.getByRole('button', { name: /^Mark 1/ }).waitFor();
    await page.getByRole('button', { name: 'Next' }).click();
    await page.getByRole('heading', { name: 'Where do the grey chips lie?' }).waitFor();
    await page.getByRole('button', { name: `Lay all ${onPrint.length} as on the photograph before` }).click();
    await page.getByRole('button', { name: /^Chip 1,/ }).waitFor();
    await expectSoundScreen(page, 'grey chips asked for with a new pull');
    await page.getByRole('button', { name: 'There are none' }).click();
    await page.getByRole('heading', { name: 'Set it down afresh and take it again' }).waitFor();
  });
});

/** Draws a box from one corner of a chip to the other. */
async function dragOver(page: Page, polygonPx: Chip['polygonPx'], index: number): Promise<void> {
  const board = page.locator('.marked-photograph');
  const picture = board.locator('img');
  await picture.waitFor();
  await board.scrollIntoViewIfNeeded();
  const box = (await board.boundingBox())!;
  const [width, height] = await picture.evaluate((image: HTMLImageElement) => [
    image.naturalWidth,
    image.naturalHeight,
  ]);
  const xs = polygonPx.map(([x]) => x);
  const ys = polygonPx.map(([, y]) => y);
  const size = await pictureSize(page);
  const at = (x: number, y: number) =>
    [box.x + (x / size[0]) * box.width, box.y + (y / size[1]) * box.height] as const;
  expect(width! / height!).toBeCloseTo(size[0] / size[1], 1);
  const inset = 4;
  await page.mouse.move(...at(Math.min(...xs) + inset, Math.min(...ys) + inset));
  await page.mouse.down();
  await page.mouse.move(...at(Math.max(...xs) - inset, Math.max(...ys) - inset), { steps: 3 });
  await page.mouse.up();
  await page.getByRole('button', { name: new RegExp(`^Chip ${index + 1},`) }).waitFor();
}

/** The print's photograph, px, from the board's own measure. */
async function pictureSize(page: Page): Promise<readonly [number, number]> {
  const viewBox = await page.locator('.marked-photograph svg').getAttribute('viewBox');
  const [, , width, height] = viewBox!.split(' ').map(Number);
  return [width!, height!];
}

async function measured(work: string, pull: string): Promise<PullEntry> {
  const read = () => sent<PullEntry>('GET', `/api/works/${work}/pulls/${pull}`);
  await expect
    .poll(async () => (await read()).photographs[0]!.measuring?.state, { timeout: 180_000, interval: 500 })
    .toBe('measured');
  return read();
}
