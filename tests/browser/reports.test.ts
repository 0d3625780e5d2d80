import { expect, inject, it } from 'vitest';
import { describeInBrowser, desk, phone } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky, startedWork } from './works.ts';

describeInBrowser('reports', (pages) => {
  it('are begun, told what they tell of, and show words with figures beside what was not recorded', async () => {
    await startedWork('S-291', { title: 'Reported Mudbank', zones: [sky(), post], stage: 'first-etch' });
    const page = await pages.atDesk('/reports');
    await page.getByRole('link', { name: 'Begin a report' }).first().click();
    await page.getByRole('button', { name: 'Begin the report' }).click();
    await page.getByText('A title is needed.').waitFor();
    await page.getByLabel('Title').fill('A season of Twelve Tides');
    await page.getByLabel('Whom it is for').fill('Saltreach Harbour Trust');
    await expectSoundScreen(page, 'a new report');
    await page.getByRole('button', { name: 'Begin the report' }).click();
    await page.getByRole('heading', { name: 'A season of Twelve Tides' }).waitFor();
    await page.getByText('Reported Mudbank, S-291').click();
    await page.getByRole('button', { name: 'Save and set' }).click();
    await page.getByText('Saved.').waitFor();
    const tried = page.getByRole('textbox', { name: 'What was tried' });
    await tried.click();
    await page.keyboard.type('We took ');
    await page.getByRole('button', { name: 'Put a figure here: What was tried' }).click();
    await page.getByRole('group', { name: 'A figure for “What was tried”' }).waitFor();
    await expectSoundScreen(page, 'a figure is picked for a report');
    await page.getByRole('searchbox', { name: 'Which figure?' }).fill('works');
    await page.keyboard.press('Enter');
    await page.keyboard.type('work and {moonbeams}.');
    await tried.getByRole('img', { name: '1 (Works)' }).waitFor();
    await page.getByRole('button', { name: 'A material was replaced' }).click();
    const replaced = page.getByRole('group', { name: 'Replaced material 1' });
    await replaced.getByLabel('Used before').fill('Nitric acid');
    await replaced.getByLabel('What takes its place').fill('tannic solution');
    await page.getByRole('button', { name: 'Save and set' }).click();
    await page.getByText('Saved.').waitFor();
    const set = page.getByRole('article', { name: 'The report as it stands' });
    await set.getByText('We took 1 work and {moonbeams}.').waitFor();
    await set.getByRole('link', { name: 'Reported Mudbank, on S-291' }).waitFor();
    await set.getByText(/grain time;/).waitFor();
    await set.getByText('how much Nitric acid was used before').waitFor();
    await expectSoundScreen(page, 'a report');
    await page.setViewportSize(phone);
    await page.reload();
    await set
      .getByText(/^2 paragraphs/)
      .first()
      .waitFor();
    expect(await set.getByText('We took 1 work and {moonbeams}.').isVisible(), 'folded on a phone').toBe(
      false,
    );
    await set.getByRole('heading', { name: 'What was tried' }).click();
    await set.getByText('We took 1 work and {moonbeams}.').waitFor();
    await page.setViewportSize(desk);
    await page.getByRole('link', { name: 'Reports', exact: true }).first().click();
    await page.getByRole('link', { name: /A season of Twelve Tides/ }).waitFor();
    await expectSoundScreen(page, 'the reports');
  });

  it('open with figures where they were put: each goes as one sign, one that is gone is said to be', async () => {
    const made = await fetch(`${inject('address')}/api/reports`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({
        title: 'Kept with figures',
        words: { aims: ['Of ', { figure: 'comparisons' }, ' prints ', { figure: 'moonbeams' }, '.'] },
      }),
    });
    const { id } = (await made.json()) as { id: string };
    const page = await pages.atDesk(`/reports/${id}`);
    const aims = page.getByRole('textbox', { name: 'Aims' });
    await aims.getByRole('img', { name: '0 (Prints measured against their stone)' }).waitFor();
    await aims.getByText('figure missing: moonbeams').waitFor();
    await page.getByText('No record gives it any more').waitFor();
    expect(await page.getByText('{').count(), 'braces on the screen').toBe(0);
    await page.getByRole('link', { name: 'Next steps' }).click();
    await aims.click();
    await page.keyboard.press('End');
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    await page.keyboard.type('are shown.');
    await page.getByRole('button', { name: 'Save and set' }).click();
    await page.getByText('Saved.').waitFor();
    const kept = await fetch(`${inject('address')}/api/reports/${id}`);
    expect(await kept.json()).toMatchObject({
      words: { aims: ['Of ', { figure: 'comparisons' }, ' prints are shown.'] },
    });
  });
});
