import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { desk, phone } from './pages.ts';

/** What holds for every screen at both sizes: axe finds nothing, and at a phone's width nothing goes off to the side. */
export async function expectSoundScreen(page: Page, name: string): Promise<void> {
  for (const size of [desk, phone]) {
    await page.setViewportSize(size);
    // A screen's own code comes after the page: what is looked at has its headline.
    await page.locator('h1').first().waitFor();
    const where = `${name} at ${size.width} × ${size.height}`;
    await page.evaluate(axe.source);
    const faults = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document, {
        resultTypes: ['violations'],
      });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
    });
    expect(faults, where).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over, `${where}: px beyond the side`).toBeLessThanOrEqual(0);
  }
  await page.setViewportSize(desk);
}
