import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { desk, phone } from './pages.ts';

/** The checker as a page reads it quickest; a page that has it already is not given it again. */
const checker = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What holds for every screen at both sizes: axe finds nothing, and at a phone's width nothing goes off to the side. */
export async function expectSoundScreen(page: Page, name: string): Promise<void> {
  for (const size of [desk, phone]) {
    await page.setViewportSize(size);
    // A screen's own code comes after the page: what is looked at has its headline.
    await page.locator('h1').first().waitFor();
    const where = `${name} at ${size.width} × ${size.height}`;
    if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(checker);
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
