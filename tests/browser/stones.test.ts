import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { keptPair } from './pair.ts';
import { enteredStone, keptStone, savedStone } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';
import { tabTo } from './tabTo.ts';
import { post, savedWork, startedWork } from './works.ts';

describeInBrowser('stones', (pages) => {
  it('are entered and grained by the keyboard alone', async () => {
    const page = await pages.atDesk('/stones/new');
    await page.getByRole('heading', { name: /^What is it called/ }).waitFor();
    await tabTo(page, 'textbox', 'Name');
    await page.keyboard.type('S-11');
    await tabTo(page, 'textbox', 'Width');
    await page.keyboard.type('400');
    await tabTo(page, 'textbox', 'Height');
    await page.keyboard.type('500');
    for (const [corner, mm] of [
      ['top left', '80,2'],
      ['top right', '80'],
      ['bottom left', '80'],
      ['bottom right', '80'],
    ] as const) {
      await tabTo(page, 'textbox', corner);
      await page.keyboard.type(mm);
    }
    await page.keyboard.press('Enter');

    await page.getByRole('heading', { name: 'S-11 has even corners; its level is not measured' }).waitFor();
    await page.getByText('40 to 43 kg, by the trade’s density').waitFor();
    await page.getByText(/^Lifting:/).waitFor();

    await tabTo(page, 'button', 'Write down a grit');
    await page.keyboard.press('Enter');
    await page.keyboard.type('80');
    await tabTo(page, 'textbox', 'Charges');
    await page.keyboard.type('3');
    await page.keyboard.press('Enter');
    await page.getByText('3 charges, minutes not counted').waitFor();
    const focused = await page.evaluate(() => document.activeElement?.textContent);
    expect(focused).toBe('Write down a grit');

    await page.keyboard.press('Enter');
    await page.keyboard.type('much');
    await page.keyboard.press('Enter');
    await page.getByText('A number from 10 to 3000.').waitFor();
    const wrong = await page.evaluate(() => document.activeElement?.getAttribute('aria-invalid'));
    expect(wrong).toBe('true');
  });

  it('keep what was typed where somebody else saved first', async () => {
    const { id } = await enteredStone('S-12', { colour: 'grey' });
    const page = await pages.atDesk(`/stones/${id}`);
    await page.getByRole('button', { name: 'Correct name, size, corners' }).click();
    const form = page.getByRole('form', { name: 'Size and kind' });
    await form.getByLabel('Note').fill('a chip at the tail');
    await savedStone(id, { note: 'a vein at the head', heightMm: 510 });
    await form.getByRole('button', { name: 'Save the stone' }).click();

    await form.getByRole('alert').filter({ hasText: 'Somebody saved the stone S-12' }).waitFor();
    expect(await form.getByLabel('Note').inputValue()).toBe('a chip at the tail');
    expect(await form.getByLabel('Height').inputValue()).toBe('510');
    await form.getByText('a vein at the head').waitFor();
    await expectSoundScreen(page, 'a save that came second');

    await form.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByRole('button', { name: 'Correct name, size, corners' }).waitFor();
    expect(await keptStone(id)).toMatchObject({ note: 'a chip at the tail', heightMm: 510, version: 3 });

    await page.getByRole('button', { name: 'Correct name, size, corners' }).click();
    await form.getByLabel('Note').fill('never to be kept');
    await savedStone(id, { note: 'as it is' });
    await form.getByRole('button', { name: 'Save the stone' }).click();
    await form.getByRole('button', { name: 'Let theirs stand' }).click();
    expect(await form.getByLabel('Note').inputValue()).toBe('as it is');
  });

  it('lose no line of a log that two people write', async () => {
    const { id } = await enteredStone('S-13');
    const page = await pages.atDesk(`/stones/${id}`);
    await page.getByRole('button', { name: 'Write down a reading' }).click();
    const form = page.getByRole('form', { name: 'Write down a reading' });
    await form.getByLabel('Largest gap').fill('0.2');
    await savedStone(id, { straightedge: [{ at: '2026-11-20T09:00:00Z', gapMm: 0.3, where: 'head' }] });
    await form.getByRole('button', { name: 'Add the line' }).click();
    await form.getByText('saving this takes nothing away from it').waitFor();
    await form.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByRole('heading', { name: 'S-13 is not level' }).waitFor();
    expect((await keptStone(id)).straightedge.map(({ gapMm }) => gapMm)).toEqual([0.3, 0.2]);
  });

  it('are refused in one sentence where they can not be', async () => {
    await enteredStone('S-14');
    const page = await pages.atDesk('/stones/new');
    await page.getByLabel('Name').fill('S-14');
    await page.getByLabel('Width').fill('4');
    await page.getByLabel('Height').fill('500');
    await page.getByRole('button', { name: 'Enter the stone' }).click();
    await page.getByText('A number from 20 to 3000.').waitFor();
    await page.getByLabel('Width').fill('400');
    await page.getByRole('button', { name: 'Enter the stone' }).click();
    await page.getByRole('alert').filter({ hasText: 'There is a stone called S-14 already.' }).waitFor();
    await expectSoundScreen(page, 'a new stone, refused');
    await page.reload();
    expect(await page.getByLabel('Height').inputValue()).toBe('500');
  });

  it('stand on the rack, are found, taken off it and put back', async () => {
    const { id } = await enteredStone('S-15', { colour: 'yellow, with a vein' });
    const page = await pages.atDesk('/stones');
    await page.getByRole('link', { name: /S-15/ }).waitFor();
    await expectSoundScreen(page, 'rack');
    await page.getByLabel('Search name, colour, note').fill('vein yellow');
    await page.getByRole('link', { name: /S-15/ }).waitFor();
    await expect.poll(() => page.getByRole('listitem').count()).toBe(1);
    await page.getByLabel('Search name, colour, note').fill('nothing of the kind');
    await page.getByText('No stone here has “nothing of the kind”').waitFor();

    await page.goto(new URL(`/stones/${id}`, page.url()).href);
    await page.getByRole('button', { name: 'Take it off the rack' }).click();
    await page.getByRole('button', { name: 'Take it off', exact: true }).click();
    await page.getByRole('heading', { name: 'S-15 is off the rack' }).waitFor();
    await expectSoundScreen(page, 'a stone that is put by');
    await page.getByRole('button', { name: 'Put it back on the rack' }).click();
    await page.getByRole('button', { name: 'Take it off the rack' }).waitFor();
    expect((await keptStone(id)).putBy).toBe(false);
  });

  it('are free again once what was on them is grained away', async () => {
    const work = await startedWork('S-17', { zones: [post] });
    const page = await pages.atDesk(`/stones/${work.stoneId}`);
    await page.getByRole('link', { name: 'Open Low Water' }).waitFor();
    await savedWork(work.id, { stage: 'regrained' });
    await page.reload();
    await page.getByRole('heading', { name: 'Nothing is on it' }).waitFor();
    await page.getByRole('link', { name: 'Start a work on it' }).waitFor();
    await page.getByRole('link', { name: /^Low Water/ }).waitFor();
  });

  it('show their photographs and their set-up, at a desk and on a phone', async () => {
    const { id } = await enteredStone('S-16', { cornerThicknessMm: [38, 38.6, 38, 38] });
    const page = await pages.onPhone(`/stones/${id}`);
    await page.getByLabel('Add a photograph').setInputFiles(keptPair('measured').stone);
    await page.getByLabel('Photograph 1 shows the stone').selectOption('level');
    await expect
      .poll(async () => (await keptStone(id)).photographs.map(({ state }) => state))
      .toEqual(['level']);
    await page.getByRole('button', { name: 'Write the set-up down' }).click();
    await page.getByLabel('Scraper').fill('380');
    await page.getByLabel('Pressure').fill('5');
    await page.getByRole('button', { name: 'Save the set-up' }).click();
    await page.getByText('5 eighths of a turn past contact').waitFor();
    await page.getByText(/The corners differ by 0\.6 mm/).waitFor();
    await page.getByText(/At 38 mm the stone is thin/).waitFor();
    for (const opener of ['Write down a grit', 'Change the set-up', 'Correct name, size, corners'])
      await page.getByRole('button', { name: opener }).click();
    await expectSoundScreen(page, 'a stone with its forms open');
  });
});
