import { expect, it } from 'vitest';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { PullSuspects } from '../../src/records/suspects.ts';
import { describeInBrowser, phone } from './pages.ts';
import { keptPair } from './pair.ts';
import { printedWork, pulled, sent, uploaded } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';

describeInBrowser('the suspects at the proof desk', (pages) => {
  it('are named with the next test, whose outcome changes the list, and stand with their evidence on a page', async () => {
    const work = await printedWork('S-141');
    const photograph = await uploaded(keptPair('measured').print);
    const shown = { photograph, takenAt: null, ageMinutes: 5, corners: null, chips: [] };
    const made = await pulled(work, 1, { photographs: [shown] });
    await expect
      .poll(
        async () => {
          const { pulls } = await sent<{ pulls: PullEntry[] }>('GET', `/api/works/${work.id}/pulls`);
          return pulls[0]!.photographs[0]!.measuring?.state;
        },
        { timeout: 90_000, interval: 500 },
      )
      .toBe('measured');
    const { answer, pull } = await sent<PullSuspects>('GET', `/api/works/${work.id}/suspects`);
    expect(pull).toEqual({ id: made.id, number: 1 });
    expect(answer.suspects[0]!.chance).not.toBeNull();
    const page = await pages.atDesk(`/works/${work.id}/proofs`);
    const desk = page.getByRole('region', { name: 'What may be behind pull 1' });
    await desk.getByText(answer.suspects[0]!.name).waitFor({ timeout: 60_000 });
    expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight)).toBe(true);
    const test = answer.tests[0]!;
    await desk.getByText(test.words).waitFor();
    await expectSoundScreen(page, 'a proof desk with suspects');
    await desk.getByRole('button', { name: test.outcomes[1]!.words }).click();
    await desk.getByText(test.words).waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'What speaks for and against each' }).click();
    await page.getByRole('heading', { name: 'What may be behind what pull 1 shows' }).waitFor();
    await page.getByText('For it:').first().waitFor();
    await expectSoundScreen(page, 'the suspects with their evidence');
    await page.setViewportSize(phone);
    await expectSoundScreen(page, 'the suspects on a phone');
    await page.getByRole('button', { name: 'It was this' }).first().click();
    await page.getByText('Noted: it was this').waitFor();
    const later = await sent<PullSuspects>('GET', `/api/works/${work.id}/suspects`);
    expect(later.answer.roomCases).toBeGreaterThan(0);
  });
});
