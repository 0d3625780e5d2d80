import { expect, it } from 'vitest';
import type { Point } from '../../src/science/geometry/point.ts';
import { mark, markAt, onPage } from './corners.ts';
import { drawFinger } from './finger.ts';
import { describeInBrowser } from './pages.ts';
import { keptPair } from './pair.ts';

const pair = keptPair('measured');

describeInBrowser('corners by finger on a phone', (pages) => {
  it('come when called, follow the finger, and are set to the pixel inside the loupe', async () => {
    const page = await pages.onPhone('/new');
    await page.getByLabel('Choose a photograph: The drawn stone').setInputFiles(pair.stone);
    await page.getByRole('img', { name: /^The drawn stone/ }).waitFor();
    await page.getByLabel('Choose a photograph: A print from it').setInputFiles(pair.print);
    await page.getByRole('img', { name: /^A print from it/ }).waitFor();
    await page.getByRole('button', { name: 'Set the corners' }).tap();
    await mark(page, 0).waitFor();
    await page.locator('.marked-photograph').scrollIntoViewIfNeeded();

    const called: Point = [500, 400];
    const at = await onPage(page, called);
    await page.touchscreen.tap(at[0], at[1]);
    await expectNear(await markAt(page, 0), called);

    const corner = pair.stoneCorners[0];
    await drawFinger(page, at, await onPage(page, [350, 250]), await onPage(page, corner));
    await expectNear(await markAt(page, 0), corner);
    expect(await page.locator('.corner-mark.active').getAttribute('aria-label')).toMatch(/^Mark 1:/);

    const [x, y] = await markAt(page, 0);
    const box = (await page.getByRole('img', { name: 'The mark under a loupe' }).boundingBox())!;
    const middle: Point = [box.x + box.width / 2, box.y + box.height / 2];
    await drawFinger(page, middle, [middle[0] - 20, middle[1]], [middle[0] - 40, middle[1] - 20]);
    // The loupe shows 2 px of the page to one of the photograph.
    expect(await markAt(page, 0)).toEqual([x + 20, y + 10]);
  });
});

/** A phone's page has a px for about every five of the photograph. */
async function expectNear(at: Point, wanted: Point): Promise<void> {
  expect(Math.hypot(at[0] - wanted[0], at[1] - wanted[1])).toBeLessThan(8);
}
