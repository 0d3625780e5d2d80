import type { Page } from 'playwright-core';

type Place = readonly [number, number];

/** Puts a finger down at the first place, draws it over the others and lifts it off at the last. */
export async function drawFinger(page: Page, ...places: readonly Place[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  for (const [index, [x, y]] of places.entries())
    await session.send('Input.dispatchTouchEvent', {
      type: index === 0 ? 'touchStart' : 'touchMove',
      touchPoints: [{ x, y }],
    });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}
