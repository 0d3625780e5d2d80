import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

const failure = {
  code: 'disk-full',
  message: 'The disk of /media/copies takes nothing more (ENOSPC): nothing was left there.',
  remedy: 'Free space on it, or choose a place on another disk.',
};

describeInBrowser('daily copies', (pages) => {
  it('a copy that failed is told on the first screen with the last good one; nothing is said while all is well', async () => {
    const page = await pages.onPhone('/leaving');
    const file = '/media/copies/stonetone-2026-11-25.tar';
    const lastGood = { file, madeAt: '2026-11-25T03:00:00.000Z' };
    const notMade = { at: '2026-11-26T03:00:00.000Z', failure };
    const state = { folder: '/media/copies', lastGood, notMade: null as object | null };
    await page.route('**/api/copies', (route) => route.fulfill({ json: state }));
    await page.goto(new URL('/', page.url()).href);
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await page.getByText('could not be made').count()).toBe(0);
    state.notMade = notMade;
    await page.reload();
    await page.getByText('Today’s copy of the records could not be made.').waitFor();
    await page.getByText(/Free space on it.*The last good copy is of 25 Nov 2026/).waitFor();
    await expectSoundScreen(page, 'a daily copy that failed');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/copies-phone.png` });
    await page.setViewportSize({ width: 1366, height: 900 });
    await expectSoundScreen(page, 'a daily copy that failed, at a desk');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/copies-desk.png` });
  });
});
