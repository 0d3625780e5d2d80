import { expect, inject, it } from 'vitest';
import type { InkEntry } from '../../src/records/ink.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky, startedWork } from './works.ts';

describeInBrowser('ink', (pages) => {
  it('starts a mix from the drawing, logs its string and what the prints said, and starts the next from it', async () => {
    const work = await startedWork('S-81', { title: 'Mudbank in Ink', zones: [sky(), post] });
    const page = await pages.atDesk(`/works/${work.id}/about`);
    await page.getByRole('link', { name: 'Mix ink for it' }).click();
    const drawing = page.getByRole('region', { name: 'From the drawing' });
    await drawing.getByText('soft to stiff, by weight').waitFor();
    await drawing.getByLabel('Sheets of the edition').fill('15');
    await drawing.getByText('for the edition').waitFor();
    await page.getByRole('button', { name: 'Start from the drawing' }).click();
    expect(await page.getByLabel('Soft', { exact: true }).inputValue()).toBe('93');
    await page.getByLabel('Name of the mix').fill('Mudbank black');
    await page.getByLabel('Both inks together').fill('50');
    await page.getByLabel('Modifier').fill('magnesium carbonate');
    await page.getByLabel('How much of it, on the ink').fill('5');
    await page.getByText('Weigh 46.5 g soft, 3.5 g stiff, then 2.5 g of the modifier').waitFor();
    await expectSoundScreen(page, 'a new mix of ink');
    await page.getByRole('button', { name: 'Log the mix' }).click();
    const strings = page.getByRole('form', { name: 'Log a string' });
    await strings.getByLabel('It broke at').fill('1,5');
    await strings.getByLabel('Where, how').fill('on the slab');
    await strings.getByRole('button', { name: 'Log the string' }).click();
    await page.getByText(/, on the slab$/).waitFor();
    await page.getByText('printed well', { exact: true }).click();
    await page.getByRole('button', { name: 'Save the mix' }).click();
    await page.getByText('Saved.').waitFor();
    await expectSoundScreen(page, 'a mix of ink');
    await page.getByRole('link', { name: 'Ink', exact: true }).click();
    const line = page.getByRole('link', { name: /Mudbank black/ });
    expect(await line.textContent()).toMatch(
      /93:7 soft to stiff, 5 % magnesium carbonate, string 1\.5 cm.*printed well/,
    );
    await expectSoundScreen(page, 'the mixes of ink');
    await page.getByRole('link', { name: 'Log a mix' }).click();
    await page.getByRole('button', { name: 'Start from it' }).click();
    expect(await page.getByLabel('Stiff', { exact: true }).inputValue()).toBe('7');
  });

  it('keeps what was typed where somebody else saved first, and names what is wrong', async () => {
    const ink = await sent<InkEntry>('POST', '/api/inks', { name: 'Reeds', softParts: 1, stiffParts: 1 });
    const page = await pages.onPhone(`/inks/${ink.id}`);
    await page.getByLabel('Soft', { exact: true }).fill('0');
    await page.getByLabel('Stiff', { exact: true }).fill('0');
    await page.getByRole('button', { name: 'Save the mix' }).click();
    await page.getByText('One of the parts is above 0.').waitFor();
    await page.getByLabel('Stiff', { exact: true }).fill('3');
    await sent('PATCH', `/api/inks/${ink.id}`, { version: 1, stiffParts: 2, note: 'warm day' });
    await page.getByRole('button', { name: 'Save the mix' }).click();
    await page.getByRole('alert').filter({ hasText: 'Somebody saved' }).waitFor();
    expect(await page.getByLabel('Stiff', { exact: true }).inputValue()).toBe('3');
    expect(await page.getByLabel('Note').inputValue()).toBe('warm day');
    await page.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByText('Saved.').waitFor();
  });
});

async function sent<T>(method: string, path: string, body: object): Promise<T> {
  const response = await fetch(inject('address') + path, {
    method,
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
  return (await response.json()) as T;
}
