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
});
