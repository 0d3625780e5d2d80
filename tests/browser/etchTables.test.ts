import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { copiedTable, savedGap } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';

describeInBrowser('etch tables', (pages) => {
  it('are copied, changed, and tell what changed', async () => {
    const page = await pages.atDesk('/tables');
    await page.getByRole('button', { name: 'Make a table of our own' }).click();
    await page.getByLabel('Copied from').selectOption('Tannic route');
    await page.getByLabel('What it is called here').fill('Saltreach tannic');
    await expectSoundScreen(page, 'the tables');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Saltreach tannic' }).waitFor();
    await page.getByText('Copied as it was.').waitFor();
    await page.getByRole('link', { name: /^in millilitres.*gum and tannic 1:1/ }).click();
    await page.getByLabel('In all').fill('90');
    await page.getByText('45', { exact: true }).first().waitFor();
    await page.goBack();
    await expectSoundScreen(page, 'a table');

    await page.getByRole('button', { name: 'Change the table' }).click();
    const dark = await openRule(page, 'dark');
    await dark.getByLabel('Wanted').fill('3:00');
    await dark.getByRole('button', { name: /^Sources disagree/ }).click();
    await dark.getByLabel('Source 1', { exact: true }).fill('the printer');
    await dark.getByLabel('It says').fill('two minutes');
    await expectSoundScreen(page, 'a table being changed');
    await page.getByRole('button', { name: 'Etch by these rows from now on' }).click();
    await dark.getByText('It lies outside least and most.').waitFor();
    await dark.getByLabel('Wanted').fill('1:45');
    await page.getByRole('button', { name: 'Etch by these rows from now on' }).click();
    await page.getByText(/^Dark: the contact is now at least 90 s, 105 s wanted/).waitFor();
    await page.getByText('One source says').waitFor();
  });

  it('keep what was typed where somebody else saved first, and take over the rest', async () => {
    const { table } = await copiedTable('Tannic for two');
    const page = await pages.atDesk(`/tables/${table.id}`);
    await page.getByRole('button', { name: 'Change the table' }).click();
    const middle = await openRule(page, 'middle');
    await middle.getByLabel('Least contact').fill('1:40');
    await savedGap(table.id, 'light', 40);
    await page.getByRole('button', { name: 'Etch by these rows from now on' }).click();
    await page.getByRole('alert').filter({ hasText: 'Somebody saved' }).waitFor();
    await page.getByText('Light: the longest gap is now 40 s (before: 45 s).').waitFor();
    expect(await middle.getByLabel('Least contact').inputValue()).toBe('1:40');
    await expectSoundScreen(page, 'a table saved second');
    await page.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByText('Issue 3', { exact: true }).waitFor();
    const sentences = page.getByRole('region', { name: 'What changed' });
    expect(await sentences.getByText(/^Light: the longest gap is now 45/).count()).toBe(0);
    await sentences.getByText(/^Middle: the contact is now at least 100 s/).waitFor();
  });

  it('that come with Stonetone are only copied', async () => {
    const page = await pages.atDesk('/tables/acid-in-gum');
    await page.getByText('No rule here for scant').waitFor();
    await page.getByText('13 to 20 drops of nitric acid 68–70 % into 30 ml of gum').waitFor();
    expect(await page.getByRole('button', { name: 'Change the table' }).count()).toBe(0);
    await expectSoundScreen(page, 'a starting table');
  });
});

async function openRule(page: Page, strength: string) {
  const rule = page.locator('details.rule').filter({
    has: page.locator('summary b', { hasText: new RegExp(`^${strength}$`) }),
  });
  await rule.locator('summary').click();
  return rule;
}
