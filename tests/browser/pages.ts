import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, onTestFinished } from 'vitest';
import { chromiumPath } from './chromium.ts';

export const desk = { width: 1366, height: 900 } as const;
export const phone = { width: 390, height: 844 } as const;

/** A page of the screens under test. */
export interface Pages {
  /** Opens `path` in a fresh browser profile at a desk's size. Errors of the page itself fail the test. */
  atDesk(path: string): Promise<Page>;
  /** The same on a phone, with touch. */
  onPhone(path: string): Promise<Page>;
}

/** What a file's browser is started with beside the usual. */
interface BrowserWanted {
  readonly args?: readonly string[];
  /** What its pages may use without asking. */
  readonly permissions?: readonly string[];
}

/** Checks in a real browser, one browser to a file; skipped where there is none. */
export function describeInBrowser(
  name: string,
  checks: (pages: Pages) => void,
  { args = [], permissions = [] }: BrowserWanted = {},
): void {
  describe.skipIf(chromiumPath === null)(name, () => {
    let browser: Browser;
    beforeAll(async () => {
      browser = await chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox', ...args] });
    });
    afterAll(() => browser?.close());
    const open = async (path: string, options: BrowserContextOptions): Promise<Page> => {
      const context = await browser.newContext({
        locale: 'en-GB',
        reducedMotion: 'reduce',
        permissions: [...permissions],
        ...options,
      });
      const page = await context.newPage();
      // A machine that runs the other checks beside these may keep a page waiting long; no time is judged here.
      page.setDefaultTimeout(60_000);
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      page.on('console', (message) => {
        // A refused request is part of what is tested; the browser tells of it too.
        if (message.type() === 'error' && !message.text().startsWith('Failed to load resource'))
          errors.push(message.text());
      });
      onTestFinished(async () => {
        await context.close();
        expect(errors).toEqual([]);
      });
      await page.goto(inject('address') + path);
      return page;
    };
    checks({
      atDesk: (path) => open(path, { viewport: desk }),
      onPhone: (path) =>
        open(path, { viewport: phone, hasTouch: true, isMobile: true, deviceScaleFactor: 2 }),
    });
  });
}
