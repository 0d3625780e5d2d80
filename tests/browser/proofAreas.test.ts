import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { KeptSeriesSettings } from '../../src/records/workSeries.ts';
import { describeInBrowser, phone } from './pages.ts';
import { printedWork, sent } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky, startedWork } from './works.ts';

describeInBrowser('lights, middles and darks drawn by hand', (pages) => {
  it('are drawn by keys, taken back and put back, given to another tone, and kept', async () => {
    const work = await startedWork('S-151', { zones: [sky(), post] });
    const page = await pages.atDesk(`/works/${work.id}/proofs/settings`);
    await page.getByRole('link', { name: 'Draw areas by hand instead' }).click();
    await page.getByRole('heading', { name: /^Draw what stands for/ }).waitFor();
    await expectSoundScreen(page, 'areas to be drawn');
    await page.getByRole('button', { name: 'Draw middles' }).click();
    for (const key of ['0', 'Enter', 'ArrowRight', 'Enter', 'ArrowDown', 'Enter', 'Shift+Enter'])
      await page.keyboard.press(key);
    const mine = page.getByRole('button', { name: /^M1 drawn by hand/ });
    await mine.waitFor();
    expect(await mine.getAttribute('aria-expanded')).toBe('true');
    await expectSoundScreen(page, 'an area in hand');
    await page.getByRole('button', { name: 'Take back' }).click();
    await mine.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Put back' }).click();
    await mine.click();
    await page.getByRole('group', { name: 'It stands for' }).getByText('lights').click();
    const given = page.getByRole('button', { name: /^L\d drawn by hand/ });
    await given.waitFor();
    await page.reload();
    await page.getByText('What was unsaved at the last visit is here again.').waitFor();
    await given.waitFor();
    await page.getByRole('button', { name: 'Save the areas' }).click();
    await page.getByRole('heading', { name: 'No pull has been entered yet' }).waitFor();
    await page.goto(new URL(`/works/${work.id}/proofs/areas`, page.url()).href);
    await page.getByText(/As saved\.$/).waitFor();
    const { areas } = await settings(work.id);
    expect(areas.lights.polygonsMm.at(-1)).toHaveLength(3);
    expect(areas.lights.zones).toEqual(['sky']);
    await page.goto(new URL(`/works/${work.id}/proofs/settings`, page.url()).href);
    await page.getByText('Drawn by hand: one of lights.').waitFor();
    await page.getByRole('group', { name: 'Post' }).getByText('darks').click();
    await page.getByRole('button', { name: 'Save areas and tolerance' }).click();
    await page.getByRole('heading', { name: 'No pull has been entered yet' }).waitFor();
    const later = await settings(work.id);
    expect(later.areas.darks.zones).toEqual(['post']);
    expect(later.areas.lights.polygonsMm.at(-1)).toEqual(areas.lights.polygonsMm.at(-1));
  });

  it('are drawn by a finger over the photographed stone', async () => {
    const work = await printedWork('S-152');
    const page = await pages.onPhone(`/works/${work.id}/proofs/areas`);
    await page.getByRole('button', { name: 'Draw darks' }).click();
    const board = page.locator('.stone-board-area');
    await board.locator('img').first().waitFor();
    await expect.poll(async () => (await board.boundingBox())!.y).toBeGreaterThanOrEqual(0);
    for (const [x, y] of [
      [0.3, 0.3],
      [0.7, 0.3],
      [0.7, 0.6],
    ] as const)
      await tap(page, x, y);
    await page.getByRole('button', { name: 'Close it' }).click();
    await page.getByRole('button', { name: /^D\d drawn by hand/ }).waitFor();
    await expectSoundScreen(page, 'areas over a photograph');
    await page.setViewportSize(phone);
    await page.getByRole('button', { name: 'Save the areas' }).click();
    await page.getByRole('heading', { name: 'No pull has been entered yet' }).waitFor();
    const { areas } = await settings(work.id);
    expect(areas.darks.polygonsMm.length).toBe(areas.darks.zones.length + 1);
  });
});

function settings(work: string): Promise<KeptSeriesSettings> {
  return sent('GET', `/api/works/${work}/series/measure`);
}

async function tap(page: Page, x: number, y: number): Promise<void> {
  const box = (await page.locator('.stone-board-area').boundingBox())!;
  await page.touchscreen.tap(box.x + x * box.width, box.y + y * box.height);
}
