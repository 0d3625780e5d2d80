import type { Page } from 'playwright-core';

/**
 * Notes, from now on, every share of a photograph that a page says is copied in: it may stand there for a moment only.
 * @returns what reads the words noted so far.
 */
export async function noteCopyingShare(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const noted: string[] = [];
    Object.assign(globalThis, { noted });
    const look = () => noted.push(...(document.body.textContent?.match(/Copying it in, [1-9]\d? %/) ?? []));
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
  return () => page.evaluate(() => (globalThis as unknown as { noted: string[] }).noted);
}
