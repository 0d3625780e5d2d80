import { expect, inject, it } from 'vitest';
import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { PullSuspects, SuspectsAnswer } from '../../src/records/suspects.ts';
import { describeInBrowser, phone } from './pages.ts';
import { enteredComparison, keptPair } from './pair.ts';
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
        { timeout: 180_000, interval: 500 },
      )
      .toBe('measured');
    const { answer, pull } = await sent<PullSuspects>('GET', `/api/works/${work.id}/suspects`);
    expect(pull).toEqual({ id: made.id, number: 1 });
    expect(answer.suspects[0]!.chance).not.toBeNull();
    const page = await pages.atDesk('/works');
    // an answer that is long in coming can be stopped, on the page and at the desk
    const door = `**/api/works/${work.id}/suspects`;
    await page.route(door, () => {});
    for (const at of ['proofs/suspects', 'proofs']) {
      await page.goto(`${inject('address')}/works/${work.id}/${at}`);
      await page.getByText('Looking for suspects …').waitFor();
      await page.getByRole('button', { name: 'Stop it' }).click();
      await page.getByText('Looking for suspects was stopped.').waitFor();
    }
    await page.unroute(door);
    await page.getByRole('button', { name: 'Look for suspects' }).click();
    const desk = page.getByRole('region', { name: 'What may be behind pull 1' });
    await desk.getByText(answer.suspects[0]!.name).waitFor({ timeout: 180_000 });
    expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight)).toBe(true);
    const test = answer.tests[0]!;
    await desk.getByText(test.words).waitFor();
    await expectSoundScreen(page, 'a proof desk with suspects');
    await desk.getByRole('button', { name: test.outcomes[1]!.words }).click();
    await desk.locator('.next-test').getByText(test.words).waitFor({ state: 'detached' });
    await desk.getByText(`Noted: ${test.outcomes[1]!.words}`).waitFor();
    await page.reload();
    await desk.getByRole('button', { name: `No, rather: ${test.outcomes[0]!.words}` }).click();
    await desk.getByText(`Noted: ${test.outcomes[0]!.words}`).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight)).toBe(true);
    await page.getByRole('link', { name: 'What speaks for and against each' }).click();
    await page.getByRole('heading', { name: 'What may be behind what pull 1 shows' }).waitFor();
    await page.getByText('For it:').first().waitFor();
    await expectSoundScreen(page, 'the suspects with their evidence');
    await page.setViewportSize(phone);
    await expectSoundScreen(page, 'the suspects on a phone');
    await page.getByRole('button', { name: 'It was this' }).first().click();
    await page.getByText('Noted: it was this').waitFor();
    await page.reload();
    await page.getByText('Noted: it was this').waitFor();
    const later = await sent<PullSuspects>('GET', `/api/works/${work.id}/suspects`);
    expect(later.answer.roomCases).toBeGreaterThan(0);
  });
});

describeInBrowser('the suspects behind a comparison', (pages) => {
  it('stand beside the picture that shows why, take outcomes, and are judged beside an earlier pull and a log', async () => {
    const pair = keptPair('measured');
    const work = await printedWork('S-142');
    await sent('POST', '/api/runs', { workId: work.id });
    const [earlier, entry] = await Promise.all(
      ['Ebb, first', 'Ebb, second'].map((title) => enteredComparison(title, pair, pair)),
    );
    for (const { id } of [earlier!, entry!])
      await expect
        .poll(async () => (await sent<ComparisonEntry>('GET', `/api/comparisons/${id}`)).state, {
          timeout: 180_000,
          interval: 500,
        })
        .toBe('measured');
    const page = await pages.atDesk(`/comparisons/${entry!.id}`);
    const door = `/api/comparisons/${entry!.id}/suspects`;
    // an answer that is long in coming can be stopped, and asked for again
    await page.route(`**${door}`, () => {});
    await page.getByRole('link', { name: 'What may have caused it' }).click();
    await page.getByRole('heading', { name: 'What may have caused it', level: 1 }).waitFor();
    await page.getByText('for 1 s').waitFor();
    await page.getByRole('button', { name: 'Stop it' }).click();
    await page.getByText('Looking for suspects was stopped.').waitFor();
    await expectSoundScreen(page, 'suspects that are no longer looked for');
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/suspects-stopped.png` });
    await page.unroute(`**${door}`);
    await page.getByRole('button', { name: 'Look for suspects' }).click();
    const before = await sent<SuspectsAnswer>('GET', door);
    await page.getByRole('heading', { name: before.suspects[0]!.name }).waitFor();
    await expectSoundScreen(page, 'the suspects behind a comparison');
    const reason = page.locator('.reason-shown').first();
    await reason.click();
    expect(await reason.getAttribute('aria-pressed')).toBe('true');
    const test = before.tests[0]!;
    await page.getByRole('button', { name: test.outcomes[0]!.words, exact: true }).first().click();
    await page.getByText(`Noted: ${test.outcomes[0]!.words}`).waitFor();
    await page.getByRole('button', { name: `No, rather: ${test.outcomes[1]!.words}` }).click();
    await page.getByText(`Noted: ${test.outcomes[1]!.words}`).waitFor();
    const other = test.test === 'water-wipe' ? 'lukewarm-wash' : 'water-wipe';
    await sent('POST', `${door}/outcomes`, { test: other, outcome: 'no' });
    await page.reload();
    await page.getByRole('heading', { name: 'Tests answered before' }).waitFor();
    await expectSoundScreen(page, 'the suspects with two tests answered');
    const first = page.locator('.earlier-tests .noted-test');
    await first.getByRole('button', { name: `No, rather: ${test.outcomes[0]!.words}` }).click();
    await page
      .locator('.suspect-tests > .noted-test')
      .getByText(`Noted: ${test.outcomes[0]!.words}`)
      .waitFor();
    const after = await sent<SuspectsAnswer>('GET', door);
    expect(after.tests.map((one) => one.test)).not.toContain(test.test);
    await page.getByText('Judge it beside an earlier pull').click();
    await page.getByLabel('An earlier pull from this stone').selectOption({ value: earlier!.id });
    await page.getByText('Judged by the picture of Ebb, first').waitFor();
    await page.getByLabel('Whose log is taken in').selectOption({ label: 'Low Water, on S-142' });
    await expect.poll(() => new URL(page.url()).searchParams.get('run')).not.toBeNull();
    await page.reload();
    await page.getByText('Judged by the picture of Ebb, first').waitFor();
    await expectSoundScreen(page, 'the suspects beside an earlier pull');
  });
});
