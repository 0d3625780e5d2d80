import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { loggedBatch, savedBatch } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';
import { tabTo } from './tabTo.ts';

describeInBrowser('mixing', (pages) => {
  it('answers while one types, by the keyboard alone', async () => {
    const page = await pages.atDesk('/mixing');
    await expectSoundScreen(page, 'the mixing questions');
    await page.getByRole('link', { name: /^How many millilitres of each part/ }).press('Enter');
    await tabTo(page, 'textbox', 'In all');
    await page.keyboard.type('75');
    const answer = page.getByRole('region', { name: 'Answer' });
    await answer.getByText('37.5').first().waitFor();
    expect(await answer.getByText('37.5').count()).toBe(2);
    await answer.getByText('ml = total · parts / all parts').waitFor();
    await expectSoundScreen(page, 'parts to millilitres');
  });

  it('says what can not be mixed, and what is dangerous', async () => {
    const page = await pages.atDesk('/mixing/alligation');
    const answer = page.getByRole('region', { name: 'Answer' });
    await page.getByLabel('The strong one').fill('4');
    await page.getByLabel('The weak one').fill('2');
    await page.getByLabel('Wanted').fill('6');
    await answer.getByText(/No such mixture can be made/).waitFor();
    await page.getByLabel('Wanted').fill('3');
    await answer.getByText('parts by weight').first().waitFor();

    await page.goto(new URL('/mixing/drops', page.url()).href);
    await page.getByLabel('Drops', { exact: true }).fill('10');
    await page.getByLabel('Drops to a millilitre').fill('21');
    await page.getByLabel('Strength of the acid').fill('15,2');
    await answer.getByText(/Pour acid INTO water or gum/).waitFor();
    await page.getByText(/Nitric never near alcohol, solvent or oily rags/).waitFor();
    await expectSoundScreen(page, 'drops of acid');
  });

  it('takes parts from an address, as a plan hands them over', async () => {
    const page = await pages.onPhone('/mixing/parts?part=gum:2&part=water:1&ml=30');
    const answer = page.getByRole('region', { name: 'Answer' });
    await answer.getByText('20', { exact: true }).waitFor();
    await answer.getByText('10', { exact: true }).waitFor();
  });
});

describeInBrowser('the batch log', (pages) => {
  it('takes a batch and says what a plan would miss', async () => {
    const page = await pages.atDesk('/batches/new');
    await page.getByText('tannic solution').click();
    await page.getByLabel('Name on the bottle').fill('Tannic, tall bottle');
    await page.getByLabel('Tannic acid').fill('40');
    await page.getByText('no', { exact: true }).click();
    await expectSoundScreen(page, 'a new batch');
    await page.getByRole('button', { name: 'Log the batch' }).click();
    await page.getByRole('link', { name: /Tannic, tall bottle/ }).waitFor();
    await page.getByText('40 g/l, pH not measured, without gum').waitFor();
    await page.getByText(/carries a caution until its pH is written down/).waitFor();
    await expectSoundScreen(page, 'the batch log');
  });

  it('keeps what was typed where somebody else saved first', async () => {
    const { id } = await loggedBatch({ kind: 'gum', name: 'Gum, 12 November', smell: 'sweet' });
    const page = await pages.atDesk(`/batches/${id}`);
    await page.getByLabel('pH, measured').fill('4.6');
    await savedBatch(id, { pH: 4.9, smell: 'sour' });
    await page.getByRole('button', { name: 'Save the batch' }).click();
    await page.getByRole('alert').filter({ hasText: 'Somebody saved' }).waitFor();
    expect(await page.getByLabel('pH, measured').inputValue()).toBe('4.6');
    expect(await page.getByLabel('sour').isChecked()).toBe(true);
    await expectSoundScreen(page, 'a batch saved second');
    await page.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByText(/^Mind: Sour gum/).waitFor();
  });
});
