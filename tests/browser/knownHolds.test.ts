import { expect, it } from 'vitest';
import type { HoldObservation } from '../../src/records/knownHolds.ts';
import { knownHolds } from '../../src/studio/trials/known/knownHolds.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

function seen(
  stones: number,
  medium: string,
  etch: string,
  hold: HoldObservation['hold'],
): HoldObservation[] {
  return Array.from({ length: 2 * stones }, (_, k) => ({
    stone: `S-0${(k % stones) + 1}`,
    from: k % stones < 2 ? ('test-stone' as const) : ('work' as const),
    strip: `${etch} ${k}`,
    medium,
    etch,
    hold,
  }));
}

/** What a room may know after half a year. */
const known = knownHolds(
  [
    ...seen(6, 'crayon #2', 'gum and tannic 1:1', 'held'),
    ...seen(3, 'crayon #2', 'gum alone', 'held'),
    ...seen(2, 'crayon #2', 'tannic solution', 'lost'),
    ...seen(5, 'waxy pencil', 'gum alone', 'lost'),
    ...seen(3, 'waxy pencil', 'tannic solution', 'held'),
    ...seen(1, 'tusche in spirit', 'gum alone', 'filled'),
  ],
  (medium) =>
    medium === 'tusche in spirit'
      ? null
      : {
          table: 'Tannic',
          row: medium === 'crayon #2' ? 'gum and tannic 1:1' : 'tannic solution',
          basis: 'common practice',
          sources:
            medium === 'crayon #2'
              ? [
                  { source: 'one handbook', advice: 'two parts of tannic to one of gum' },
                  { source: 'another handbook', advice: 'gum alone' },
                ]
              : [],
          choice: medium === 'crayon #2' ? 'The middle was taken.' : null,
        },
);

describeInBrowser('what we know here', (pages) => {
  it.each(['atDesk', 'onPhone'] as const)('is a grid of what held, %s', async (size) => {
    const page = await pages[size]('/known');
    await page.getByText('Nothing was read here yet').waitFor();
    await expectSoundScreen(page, `nothing known yet, ${size}`);
    await page.route('**/api/known-holds', (route) => route.fulfill({ json: known }));
    await page.reload();
    await page.getByRole('heading', { name: '2 of 6 are sure, after 6 stones' }).waitFor();
    const crayon = page.getByRole('region', { name: 'crayon #2' });
    await crayon.getByText(/Sources disagree/).waitFor();
    expect(await crayon.getByRole('listitem').count()).toBe(3);
    await page
      .getByRole('region', { name: 'tusche in spirit' })
      .getByText('Not tried here: gum and tannic 1:1, tannic solution.')
      .waitFor();
    await expectSoundScreen(page, `what is known, ${size}`);
    if (!process.env.PICTURES) return;
    // The rules walk through widths.
    await page.setViewportSize(
      size === 'atDesk' ? { width: 1366, height: 900 } : { width: 390, height: 844 },
    );
    await page.screenshot({ path: `${process.env.PICTURES}/known-${size}.png`, fullPage: true });
  });
});
