import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { RunSummary } from '../../src/records/run.ts';
import type { Approval, KeptSeriesSettings, WorkSeries } from '../../src/records/workSeries.ts';
import { describeInBrowser, phone } from './pages.ts';
import { keptPair } from './pair.ts';
import { printedWork, pulled, rag, sent, uploaded } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky, startedWork } from './works.ts';

describeInBrowser('the proof desk', (pages) => {
  it('says on an empty page what comes first, and takes a pull told by eye with one question at a time', async () => {
    const work = await startedWork('S-111', { zones: [sky(), post] });
    const page = await pages.onPhone(`/works/${work.id}`);
    await page.getByRole('link', { name: 'Proofs' }).click();
    await page.getByRole('heading', { name: 'No pull has been entered yet' }).waitFor();
    await page.getByText('A print is laid on its drawn stone').waitFor();
    await expectSoundScreen(page, 'a proof desk without pulls');
    await page.setViewportSize(phone);
    await page.getByRole('link', { name: 'Enter a pull' }).click();
    await asked(page, 'Which pull is it?');
    await expectSoundScreen(page, 'which pull');
    await page.setViewportSize(phone);
    await page.getByText('trial proof', { exact: true }).click();
    await next(page);
    await asked(page, 'Photograph pull 1');
    await page.getByRole('button', { name: /tell the tones by eye/ }).click();
    for (const [tone, letter] of [
      ['lights', 'C'],
      ['middles', 'H'],
      ['darks', 'L'],
    ] as const) {
      await asked(page, `How dark are the ${tone}?`);
      if (tone === 'middles') await expectSoundScreen(page, 'a tone told by eye');
      await page.setViewportSize(phone);
      await page.getByText(letter, { exact: true }).click();
      await next(page);
    }
    await asked(page, 'How long ago was it pulled?');
    await page.getByText('5 minutes').click();
    await next(page);
    await asked(page, 'Which paper?');
    await page.getByLabel(/^What paper it is/).fill('newsprint');
    // a camera may end the page that it was called from
    await page.reload();
    await asked(page, 'Which paper?');
    await page.getByText('dry', { exact: true }).click();
    await next(page);
    await asked(page, 'Which ink and roller?');
    await next(page);
    await asked(page, 'How was it inked?');
    await page.getByRole('button', { name: 'Charges: one more' }).click();
    await expectSoundScreen(page, 'charges and passes');
    await page.setViewportSize(phone);
    await next(page);
    await asked(page, 'How was the press set?');
    await next(page);
    await asked(page, 'Who pulled it?');
    await page.getByLabel('Initials').fill('P.R.');
    await next(page);
    await asked(page, 'Anything to remark?');
    await page.getByRole('button', { name: 'Keep pull 1' }).click();
    await page.getByRole('heading', { name: 'Can’t tell yet whether it is steady' }).waitFor();
    await expectSoundScreen(page, 'the answer after a first pull');
    const [pull] = (await sent<{ pulls: PullEntry[] }>('GET', `/api/works/${work.id}/pulls`)).pulls;
    expect(pull).toMatchObject({
      number: 1,
      kind: 'trial-proof',
      paper: { id: null, words: 'newsprint' },
      damp: false,
      charges: 0,
      passes: null,
      who: 'P.R.',
      eye: { lights: 0.1, middles: 0.5, darks: 0.9, ageMinutes: 5 },
    });
    await page.setViewportSize(phone);
    await page.getByRole('link', { name: 'Enter the next pull' }).click();
    await expect
      .poll(() => page.getByRole('group', { name: 'Number on the stone' }).textContent())
      .toContain('2');
  });

  it('photographs a print twice on a phone, with its marks, and answers; the desk stands in one view', async () => {
    const work = await printedWork('S-112');
    const pair = keptPair('measured');
    const page = await pages.onPhone(`/works/${work.id}/proofs/new`);
    await next(page);
    await asked(page, 'Photograph pull 1');
    await expectSoundScreen(page, 'photograph a pull');
    await page.setViewportSize(phone);
    await page.locator('input[type=file]').setInputFiles(pair.print);
    await asked(page, 'Do the four marks sit right?');
    await page.getByRole('button', { name: /^Mark 1/ }).waitFor();
    await expectSoundScreen(page, 'the marks of a print');
    await page.setViewportSize(phone);
    await next(page);
    await asked(page, 'Set it down afresh and take it again');
    await page.locator('input[type=file]').setInputFiles(pair.print);
    await page.getByText('This is the same photograph once more.').waitFor();
    await page.getByRole('button', { name: 'Once is enough' }).click();
    await asked(page, 'How long ago was it pulled?');
    await page.getByText('5 minutes').click();
    await next(page);
    await page.getByLabel(/^What paper it is/).fill('rag 250');
    for (let step = 0; step < 5; step++) await next(page);
    await page.getByRole('button', { name: 'Keep pull 1' }).click();
    await page.getByRole('link', { name: 'To the proofs' }).waitFor({ timeout: 180_000 });
    await expectSoundScreen(page, 'the answer of a pull that was read');
    await page.getByRole('link', { name: 'To the proofs' }).click();
    await page
      .getByRole('img', { name: /^Darkness of the pulls: lights 0\.\d+ ± 0\.\d+ on pull 1/ })
      .waitFor();
    await expectSoundScreen(page, 'a proof desk with one pull');
    const [pull] = (await sent<{ pulls: PullEntry[] }>('GET', `/api/works/${work.id}/pulls`)).pulls;
    expect(pull!.photographs[0]!.corners).not.toBeNull();
    expect(pull!.photographs[0]!.measuring?.state).toBe('measured');
    await page
      .getByRole('list', { name: /^The pulls/ })
      .getByRole('link')
      .click();
    await page.getByRole('heading', { name: 'Pull 1, read once' }).waitFor();
    const row = page
      .getByRole('table', { name: /drawn stone and this pull/ })
      .getByRole('row', { name: /^middles/ });
    await row.waitFor({ timeout: 180_000 });
    expect(await row.textContent()).toMatch(/0\.\d+ ± 0\.\d+/);
    await page.getByText('surely darker').waitFor();
    await expectSoundScreen(page, 'a pull beside its drawn stone');
    await page.getByText('the pull before').click();
    await page.getByText(/no pull before it was measured/).waitFor();
    await page.getByRole('link', { name: 'Photograph it again' }).click();
    await page.getByRole('heading', { name: 'Is it the photograph?' }).waitFor();
    await expectSoundScreen(page, 'a second reading of one sheet');
  });

  it('shows pulls, lines, answer, changes and good to print at a desk without scrolling', async () => {
    const work = await startedWork('S-113', { zones: [sky(), post] });
    for (const [index, middles] of [0.2, 0.3, 0.4, 0.4, 0.5, 0.5, 0.5].entries())
      await pulled(work, index + 1, {
        paper: index < 2 ? { id: null, words: 'newsprint' } : rag,
        charges: index < 4 ? 6 : 8,
        eye: { lights: 0.1, middles, darks: 0.9, ageMinutes: 5, who: 'P.R.' },
      });
    const page = await pages.atDesk(`/works/${work.id}/proofs`);
    await page.getByRole('heading', { name: 'Can’t tell yet whether it is steady' }).waitFor();
    await page.getByRole('img', { name: /^Darkness of the pulls/ }).waitFor();
    await page.getByText('Changed from pull 6 to 7').waitFor();
    await page.getByText(/Mixed papers: pulls 1 and 2 on newsprint left out/).waitFor();
    await page.getByRole('heading', { name: 'Good to print' }).waitFor();
    await page
      .getByText(/by eye/)
      .first()
      .waitFor();
    expect(await page.getByRole('link', { name: 'Enter a pull' }).count()).toBe(1);
    const over = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
    expect(over).toBeLessThanOrEqual(0);
    await expectSoundScreen(page, 'a proof desk with pulls told by eye');
  });

  it('stops a measurement, says that it was, and measures again; a print of nothing is refused with its reason', async () => {
    const work = await printedWork('S-118');
    const photograph = await uploaded(keptPair('measured').print);
    const strange = await uploaded(keptPair('measured').stone);
    const photographs = [{ photograph, corners: null }];
    await pulled(work, 1, { photographs: [{ photograph: strange, corners: null }] });
    const two = await pulled(work, 2, { photographs });
    const page = await pages.onPhone(`/works/${work.id}/proofs/${two.id}/answer`);
    await page.getByRole('heading', { name: 'Pull 2 is being read' }).waitFor();
    await expectSoundScreen(page, 'a pull being read');
    await page.setViewportSize(phone);
    await page.getByRole('button', { name: 'Stop the measurement' }).click();
    await page.getByText('Its measurement was stopped.').waitFor();
    await page.getByRole('button', { name: 'Measure it again' }).click();
    await page.getByRole('heading', { name: 'Pull 2 is being read' }).waitFor();
    await page.getByRole('link', { name: 'To the proofs' }).waitFor({ timeout: 180_000 });
    await page.getByRole('link', { name: 'To the proofs' }).click();
    await page.getByText('not read: see why').waitFor();
    await page
      .getByRole('list', { name: /^The pulls/ })
      .getByRole('link')
      .first()
      .click();
    await page.getByRole('heading', { name: 'Pull 1, not read' }).waitFor();
    await page.getByRole('button', { name: 'Measure it again' }).waitFor();
    await expectSoundScreen(page, 'a pull that was refused');
  });

  it('says clearly that a number is taken', async () => {
    const work = await startedWork('S-114', { zones: [sky(), post] });
    const page = await pages.onPhone(`/works/${work.id}/proofs/new`);
    await next(page);
    await page.getByRole('button', { name: 'Enter it without a reading' }).click();
    await page.getByLabel(/^What paper it is/).fill('rag 250');
    await pulled(work, 1, {});
    for (let step = 0; step < 5; step++) await next(page);
    await page.getByRole('button', { name: 'Keep pull 1' }).click();
    await page.getByText('There is a pull 1 of this work already.').waitFor();
    await page.getByRole('button', { name: 'Change its number' }).click();
    await page.getByRole('button', { name: 'Number on the stone: one more' }).click();
    await expect
      .poll(() => page.getByRole('group', { name: 'Number on the stone' }).textContent())
      .toContain('2');
  });

  it('takes two signatures by two presses, and withdraws them with a reason and what depended on them', async () => {
    const work = await startedWork('S-115', { zones: [sky(), post] });
    const eye = { lights: 0.1, middles: null, darks: 0.9, ageMinutes: 5, who: 'P.R.' };
    for (const number of [1, 2, 3]) await pulled(work, number, { eye, who: 'P.R.' });
    const { id: run } = await sent<RunSummary>('POST', '/api/runs', { workId: work.id });
    const page = await pages.atDesk(`/bench/${run}`);
    await page.getByRole('link', { name: 'The proofs' }).click();
    await page.getByRole('link', { name: 'Sign it good to print' }).click();
    await page.getByRole('heading', { name: 'Pulls 1–3 agree by eye: two signatures are missing' }).waitFor();
    await page
      .getByText('Nothing on this stone stands for middles and darks: good to print says nothing of them.')
      .waitFor();
    await expectSoundScreen(page, 'the two signatures');
    await page.getByLabel('The artist’s initials').fill('A.T.');
    await page.getByRole('button', { name: 'I accept pull 3, as artist' }).click();
    const approvals = `/api/works/${work.id}/approvals`;
    expect((await sent<{ approvals: Approval[] }>('GET', approvals)).approvals).toEqual([]);
    await page.getByRole('button', { name: 'I accept pull 3, as printer' }).click();
    await page.getByRole('heading', { name: 'Pull 3 is good to print' }).waitFor();
    await expectSoundScreen(page, 'the standard');
    await pulled(work, 4, { kind: 'edition' });
    await page.getByRole('button', { name: 'It is no longer good to print' }).click();
    await page.getByLabel('Who says so').fill('A.T.');
    await page.getByLabel('Why').fill('the moon closes');
    await page.getByRole('button', { name: 'No longer good to print' }).click();
    await page.getByText('Pull 4 of the edition was printed to this standard.').waitFor();
    await expectSoundScreen(page, 'no longer good to print');
  });

  it('corrects a fact, notes and closes a fault, and holds a pull to be the best', async () => {
    const work = await startedWork('S-116', { zones: [sky(), post] });
    await pulled(work, 1, {});
    const two = await pulled(work, 2, { charges: 6 });
    const page = await pages.atDesk(`/works/${work.id}/proofs/${two.id}`);
    await page.getByRole('heading', { name: 'Pull 2, not read' }).waitFor();
    await expectSoundScreen(page, 'a pull that was not read');
    await page.getByRole('button', { name: 'Correct a fact' }).click();
    await page.getByLabel('Charges').fill('7');
    await expectSoundScreen(page, 'facts being corrected');
    await page.getByRole('button', { name: 'Save the facts' }).click();
    await page.getByRole('button', { name: 'Correct a fact' }).waitFor();
    await page.getByLabel('A fault that has to go before good to print').fill('slur at the post');
    await page.getByRole('button', { name: 'Note the fault' }).click();
    await page.getByRole('heading', { name: 'One fault stands' }).waitFor();
    await page.getByRole('button', { name: 'Put right: slur at the post' }).click();
    await page.getByLabel('What was done about: slur at the post').fill('less pressure');
    await page.getByRole('button', { name: 'It is put right' }).click();
    await page.getByRole('heading', { name: 'No fault stands' }).waitFor();
    await page.getByRole('button', { name: 'Hold it to be the best so far' }).click();
    await page.getByText('It is held to be the best so far.').waitFor();
    const kept = await sent<PullEntry>('GET', `/api/works/${work.id}/pulls/${two.id}`);
    expect(kept).toMatchObject({ charges: 7, faults: [{ closed: { words: 'less pressure' } }] });
    await page.getByRole('button', { name: 'Lay it aside' }).click();
    await page.getByText('Pull 2 is laid aside; its number is free.').waitFor();
    await page.getByRole('button', { name: 'Put it back with the others' }).click();
    await expect
      .poll(
        async () => (await sent<{ pulls: PullEntry[] }>('GET', `/api/works/${work.id}/pulls`)).pulls.length,
      )
      .toBe(2);
  });

  it('defines lights, middles and darks by choosing zones, with the tolerance', async () => {
    const work = await startedWork('S-117', { zones: [sky(), post] });
    const page = await pages.atDesk(`/works/${work.id}/proofs/settings`);
    await page.getByRole('group', { name: 'Sky' }).getByText('middles').click();
    await page.getByLabel(/^Tolerance/).fill('0.03');
    await expectSoundScreen(page, 'areas and tolerance');
    await page.getByRole('button', { name: 'Save areas and tolerance' }).click();
    await page.getByRole('heading', { name: 'No pull has been entered yet' }).waitFor();
    const kept = await sent<KeptSeriesSettings>('GET', `/api/works/${work.id}/series/measure`);
    expect(kept).toMatchObject({
      tolerance: 0.03,
      areas: { lights: { zones: [] }, middles: { zones: ['sky'] } },
    });
    const { tolerance } = await sent<WorkSeries>('GET', `/api/works/${work.id}/series`);
    expect(tolerance).toBe(0.03);
  });
});

async function asked(page: Page, question: string): Promise<void> {
  await page.getByRole('heading', { name: question, level: 1 }).waitFor();
}

async function next(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Next' }).click();
}
