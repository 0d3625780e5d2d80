import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

describeInBrowser('room and hands', (pages) => {
  it('answers while one types, as a range, with who decides', async () => {
    const page = await pages.atDesk('/room');
    await expectSoundScreen(page, 'the questions about the room');
    await page.getByRole('link', { name: /How much vapour can a washout give/ }).click();
    await page.getByLabel('Poured').fill('30');
    await page.getByLabel('Limit').fill('350');
    await page.getByLabel('Room', { exact: true }).fill('50');
    await page.getByLabel('Air changes an hour').fill('4');
    const answer = page.getByRole('region', { name: 'Answer' });
    await answer.getByText('480 to 4,800 mg/m³').waitFor();
    await answer.getByText(/Local codes.* come first/).waitFor();
    await expectSoundScreen(page, 'the vapour of a washout');
    expect(await page.locator('main').textContent()).not.toMatch(/\bsafe to\b/i);
  });

  it('fits on a phone, and says what is wrong with what was typed', async () => {
    const page = await pages.onPhone('/room/lift');
    await page.getByLabel('Stone, wide').fill('many');
    await page
      .getByText(/number/)
      .first()
      .waitFor();
    await page.getByLabel('Stone, wide').fill('400');
    await page.getByLabel('High').fill('500');
    await page.getByLabel('Thick').fill('80');
    await page
      .getByRole('region', { name: 'Answer' })
      .getByText(/not by hand/)
      .first()
      .waitFor();
    await expectSoundScreen(page, 'the lift of a stone');
  });

  it('enters a material from its sheet, and says what must be kept apart', async () => {
    const page = await pages.onPhone('/materials');
    await page.getByRole('heading', { name: 'No material is entered yet' }).waitFor();
    await expectSoundScreen(page, 'the register before anything is entered');
    await page.getByRole('link', { name: 'Enter a material' }).click();
    await page.getByRole('button', { name: 'Enter the material' }).click();
    await page.getByText(/A name is needed/).waitFor();
    await page.getByLabel('What it is').fill('Citrus cleaner');
    await page.getByText('yes', { exact: true }).click();
    await page.getByText('can cause allergy or asthma', { exact: true }).click();
    await page.getByText('burns', { exact: true }).click();
    await expectSoundScreen(page, 'a new material');
    await page.getByRole('button', { name: 'Enter the material' }).click();
    const line = page.getByRole('link', { name: /Citrus cleaner/ });
    await line.getByText('burns, can cause allergy or asthma').waitFor();
    await enteredMaterial(page.url(), { name: 'Nitric acid', hazards: ['oxidising'] });
    await page.reload();
    await page.getByText(/Keep apart/).waitFor();
    await expectSoundScreen(page, 'the register');
    await line.click();
    await page.getByLabel('What to wear').fill('Gloves');
    await page.getByRole('button', { name: 'Save the material' }).click();
    await page.getByText('Saved.').waitFor();
    await expectSoundScreen(page, 'a material');
  });
});

/** A material entered by another program. */
async function enteredMaterial(address: string, material: object): Promise<void> {
  const answer = await fetch(new URL('/api/materials', address), {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(material),
  });
  expect(answer.status).toBe(201);
}
