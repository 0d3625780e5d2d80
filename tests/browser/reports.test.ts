import { expect, it } from 'vitest';
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
    await page.getByLabel('What was tried').fill('We took {works} work and {moonbeams}.');
    await page.getByRole('button', { name: 'A material was replaced' }).click();
    const replaced = page.getByRole('group', { name: 'Replaced material 1' });
    await replaced.getByLabel('Used before').fill('Nitric acid');
    await replaced.getByLabel('What takes its place').fill('tannic solution');
    await page.getByRole('button', { name: 'Save and set' }).click();
    await page.getByText('Saved.').waitFor();
    const set = page.getByRole('article', { name: 'The report as it stands' });
    await set.getByText('We took 1 work and {moonbeams}.').waitFor();
    await set.getByText('{moonbeams}. It stands in the words as you typed it.').waitFor();
    await set.getByText('not recorded: grain time on S-291 (Reported Mudbank)').waitFor();
    await set.getByText('how much Nitric acid was used before').waitFor();
    await expectSoundScreen(page, 'a report');
    await page.setViewportSize(phone);
    await page.reload();
    await set.getByText('one paragraph').first().waitFor();
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
});
