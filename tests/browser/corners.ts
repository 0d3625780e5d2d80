import type { Locator, Page } from 'playwright-core';
import type { Corners, Point } from '../../src/science/geometry/point.ts';

/** The button of one mark on the photograph, 0 to 3. */
export function mark(page: Page, index: number): Locator {
  return page.getByRole('button', { name: new RegExp(`^Mark ${index + 1}:`) });
}

/** Where a mark says it is, photograph px. */
export async function markAt(page: Page, index: number): Promise<Point> {
  const name = (await mark(page, index).getAttribute('aria-label')) ?? '';
  const [, x, y] = /At (-?\d+), (-?\d+) px/.exec(name) ?? [];
  return [Number(x), Number(y)];
}

/** Where a place of the photograph (px) is on the page. */
export async function onPage(page: Page, [x, y]: Point): Promise<Point> {
  const board = page.locator('.marked-photograph');
  const box = (await board.boundingBox())!;
  const [widthPx, heightPx] = await board.evaluate((element) => {
    const { width, height } = element.querySelector('svg')!.viewBox.baseVal;
    return [width, height] as const;
  });
  return [box.x + (x / widthPx) * box.width, box.y + (y / heightPx) * box.height];
}

/** Drags all four marks to their places with the mouse. */
export async function dragMarks(page: Page, corners: Corners): Promise<void> {
  await mark(page, 0).waitFor();
  for (const [index, corner] of corners.entries()) {
    const from = await onPage(page, await markAt(page, index));
    const to = await onPage(page, corner);
    await page.mouse.move(...(from as [number, number]));
    await page.mouse.down();
    await page.mouse.move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
    await page.mouse.move(...(to as [number, number]));
    await page.mouse.up();
  }
}
