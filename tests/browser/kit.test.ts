import { expect, inject, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

describeInBrowser('the kit', (pages) => {
  it('is entered, changed, taken out and brought back', async () => {
    const page = await pages.onPhone('/mixing');
    await page.getByRole('link', { name: /^Kit/ }).click();
    await page.getByRole('link', { name: 'Enter a tool' }).first().click();
    await page.getByText('Press set-up', { exact: true }).click();
    await page.getByLabel('Pressure from contact').fill('90');
    await page.getByRole('button', { name: 'Enter it' }).click();
    await page.getByText('It needs a name, as it is called here.').waitFor();
    await page.getByText('A number from -80 to 80.').waitFor();
    await expectSoundScreen(page, 'a tool that can not be');
    await page.getByLabel('Pressure from contact').fill('3');
    await page.getByLabel('Name').fill('Heavy bed');
    await page.getByRole('button', { name: 'Enter it' }).click();
    const line = page.getByRole('link', { name: /Heavy bed/ });
    expect(await line.textContent()).toContain('+3/8 from contact');
    await expectSoundScreen(page, 'the kit');

    await line.click();
    await page.getByLabel('Packing').fill('two newsprints');
    await page.getByRole('button', { name: 'Save it' }).click();
    await page.getByText('Saved.').waitFor();
    await expectSoundScreen(page, 'one of the kit');
    await page.getByRole('button', { name: 'It is no longer used' }).click();
    await page.getByRole('heading', { name: /What is worked with|The kit/ }).waitFor();
    expect(await kitNames('/api/kit')).not.toContain('Heavy bed');
    expect(await kitNames('/api/kit?putBy=yes&search=newsprints')).toEqual(['Heavy bed']);
  });
});

async function kitNames(path: string): Promise<readonly string[]> {
  const { kit } = (await (await fetch(inject('address') + path)).json()) as { kit: { name: string }[] };
  return kit.map(({ name }) => name);
}
