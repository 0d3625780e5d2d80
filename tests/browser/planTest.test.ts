import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { TestStone } from '../../src/records/testStone.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { openServer } from './openServer.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

/** Types what is tried of something, a line each; lines beyond the first two are asked for. */
async function tried(page: Page, name: string, ...levels: readonly string[]): Promise<void> {
  for (const [index, level] of levels.entries()) {
    if (index > 1) await page.getByRole('button', { name: `Try one more: ${name}` }).click();
    await page.getByLabel(`${name}, number ${index + 1}`).fill(level);
  }
}

describeInBrowser('a test that is planned', (pages) => {
  it('is laid out, weighed, and its stones are entered', async () => {
    // what a room knows of its scatter is told exactly: in a room where no other check reads
    const { server } = await openServer({ studio: sampleStudio() });
    const page = await pages.atDesk('/');
    await page.goto(`${server.address}/test-stones`);
    await page.getByRole('link', { name: 'Plan a test' }).click();
    await page.getByRole('heading', { name: 'Plan a test' }).waitFor();
    await page.getByRole('button', { name: 'Lay it out' }).click();
    await page.getByText('Give the test a name.').waitFor();
    await page.getByLabel('What do you want to know?').fill('T-91: which etch');
    await tried(page, 'medium', 'crayon-2', 'tusche-water');
    await tried(page, 'etch', 'None', 'gum alone', 'tannic');
    await page.getByText('What else may be said').click();
    await page.getByLabel('The control').selectOption('None');
    await page.getByLabel('Stones', { exact: true }).fill('2');
    await page.getByLabel('Smallest difference that matters').fill('0.3');
    await expectSoundScreen(page, 'a test to be planned');
    await page.getByRole('button', { name: 'Lay it out' }).click();
    const result = page.getByRole('region', { name: 'The test as it is laid out' });
    await result.getByText('6 on each of 2 stones').waitFor();
    await result.getByRole('row', { name: /^middling/ }).waitFor();
    await result.getByText(/Two stones alike are usually few: a difference/).waitFor();
    await result
      .getByText(/unknown: 0 read/)
      .first()
      .waitFor();
    await result.getByText(/The cheapest that notices 0.3 at middling scatter/).waitFor();
    await result.getByRole('listitem', { name: 'rows and columns' }).waitFor();
    await expectSoundScreen(page, 'a test that is laid out');
    await result.getByRole('button', { name: 'Plan it so: in blocks' }).click();
    await page.getByRole('progressbar').waitFor();
    await page.getByRole('button', { name: 'Stop it' }).click();
    await page.getByText('come here once you lay it out').waitFor();
    await page.getByRole('button', { name: 'Lay it out' }).click();
    await result.getByRole('listitem', { name: 'blocks' }).getByText('As it is laid out').waitFor();
    await result.getByRole('button', { name: 'Plan it so: in strips' }).click();
    await page.getByText('Drawing lots and weighing it').waitFor();
    await page.getByRole('region', { name: 'The test as it is laid out' }).waitFor();
    await page.getByLabel('Stones', { exact: true }).fill('2');
    await page.getByLabel('Strips alike on a stone').fill('1');
    await page.getByRole('button', { name: 'Lay it out' }).click();
    const sheet = await result.getByRole('link', { name: /Tracing sheet, true size/ }).getAttribute('href');
    const pdf = await fetch(server.address + sheet);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    await result.getByRole('button', { name: 'Make the 2 test stones of it' }).click();
    await page.getByRole('link', { name: /T-91: which etch, stone 2 of 2/ }).waitFor();
    await page.getByRole('link', { name: /T-91: which etch, stone 1 of 2/ }).click();
    await page.getByRole('link', { name: 'Patches' }).click();
    await page.waitForURL(/patches$/);
    const id = new URL(page.url()).pathname.split('/')[2]!;
    const kept = (await (await fetch(`${server.address}/api/test-stones/${id}`)).json()) as TestStone;
    expect(kept.list).toMatchObject({ sealed: true, untold: 6 });
  });

  it('changed, it is laid out anew before anything can be made of it', async () => {
    const page = await pages.atDesk('/test-stones/plan');
    await page.getByLabel('What do you want to know?').fill('T-92');
    await tried(page, 'medium', 'crayon-2', 'tusche-water');
    await tried(page, 'etch', 'gum alone', 'tannic', 'gum with vinegar');
    // what a new etch is made of is asked as wide as the page lets it, its button on a line of its own
    await page.getByRole('button', { name: '“gum with vinegar” is a new one' }).click();
    const own = page.getByRole('group', { name: 'What “gum with vinegar” is made of' });
    await own.waitFor();
    const form = page.getByRole('form', { name: 'What the test is to tell' });
    const [ofOwn, ofForm] = [(await own.boundingBox())!, (await form.boundingBox())!];
    expect(ofOwn.width).toBeGreaterThan(0.85 * ofForm.width);
    const button = (await own.getByRole('button', { name: 'Take it so' }).boundingBox())!;
    const lasts = (await own.getByLabel('Lies for').boundingBox())!;
    expect(button.y).toBeGreaterThanOrEqual(lasts.y + lasts.height);
    await page.getByLabel('etch, number 3').fill('');
    await page.getByRole('button', { name: 'Lay it out' }).click();
    await page.getByRole('button', { name: 'Make the 3 test stones of it' }).waitFor();
    await page.getByLabel('Height of the stone').fill('80');
    expect(await page.getByRole('button', { name: /^Make the/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Lay it out' }).click();
    await page.getByText(/do not fit on a stone of 300 × 80 mm/).waitFor();
  });

  it('is kept as it is typed, its levels are checked, and its stone is sealed and goes to the bench', async () => {
    const page = await pages.atDesk('/test-stones/plan');
    await page.getByLabel('What do you want to know?').fill('T-93: kept');
    await tried(page, 'medium', 'crayon #2', 'waxi pencil');
    await tried(page, 'etch', 'None', 'gum alone');
    await page.waitForURL(/\/test-stones\/plan\/.+/);
    await page.getByText('The nearest that is known is “waxy pencil”.').waitFor();
    await page.getByText('Kept: leave this page').waitFor();
    await expectSoundScreen(page, 'a planned test that is kept');
    await page.goto(`${inject('address')}/test-stones`);
    await page
      .getByRole('link', { name: /T-93: kept.*One word is not known here/ })
      .first()
      .click();
    await page.getByRole('button', { name: '“waxi pencil” is a new one' }).click();
    await page.getByText('Kept: leave this page').waitFor();
    expect(await page.getByLabel('medium, number 1').inputValue()).toBe('crayon #2');
    expect(await page.getByLabel('medium, number 2').inputValue()).toBe('waxi pencil');
    await page.getByLabel('Stones', { exact: true }).fill('1');
    await page.getByRole('button', { name: 'Lay it out' }).click();
    await page.getByRole('button', { name: 'Make the test stone of it' }).click();
    await page.getByRole('heading', { name: /On which stone/ }).waitFor();
    await page.getByText('Choose a stone, or name the new one.').waitFor();
    // until it is on a stone, its reading leads to the steps and not to photographs that cannot be there
    await page.getByRole('link', { name: 'Reading', exact: true }).click();
    await page.getByRole('heading', { name: 'First it is drawn and etched' }).waitFor();
    await page.getByRole('link', { name: 'To the steps' }).click();
    await page.getByLabel('Its name').fill(`S-93 ${Date.now()}`);
    await expectSoundScreen(page, 'a test stone without its stone');
    await page.getByRole('button', { name: 'Make it ready for the bench' }).click();
    await page.getByRole('heading', { name: 'Every step, in order' }).waitFor();
    await page.getByRole('button', { name: 'Go to the bench' }).waitFor();
    await page.getByText(/nothing is laid here/).waitFor();
    await expectSoundScreen(page, 'the steps of a test stone');
    await page.getByRole('link', { name: 'Patches' }).click();
    await page.getByRole('heading', { name: 'Who got what is sealed until it is read' }).waitFor();
    // whoever takes the records out is told that the tables say what is sealed here
    const sealed = page.url();
    await page.goto(`${inject('address')}/keeping`);
    await page.getByText(/sealed still: .*T-93: kept/).waitFor();
    await page.goto(sealed);
    await page.getByText('Open the list before it is read').click();
    await expectSoundScreen(page, 'a sealed test stone');
    await page.getByLabel('Who opens it').fill('P.R.');
    await page.getByLabel('Why', { exact: true }).fill('to see it');
    await page.getByRole('button', { name: 'Open the list, and have it said' }).click();
    await page.getByRole('heading', { name: 'What did each patch get?' }).waitFor();
    await page.getByRole('link', { name: 'Answer' }).click();
    await page.getByRole('heading', { name: /No answer yet/ }).waitFor();
  });
});
