import type { Locator, Page } from 'playwright-core';

/** Presses Tab until the focus is on what is named, as a person would who sees it; fails where it never gets there. */
export async function tabTo(
  page: Page,
  role: 'link' | 'button' | 'textbox' | 'slider' | 'combobox',
  name: string,
): Promise<void> {
  await reach(page, page.getByRole(role, { name, exact: true }).first(), name);
}

/** Presses Tab until the focus is on `target`, which is called `name` where that fails. */
export async function reach(page: Page, target: Locator, name: string): Promise<void> {
  await target.waitFor({ state: 'attached' });
  for (let pressed = 0; pressed < 60; pressed++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${name}`);
}
