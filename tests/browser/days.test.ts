import { expect, inject, it } from 'vitest';
import type { StudioSettings } from '../../src/records/studio.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { startedWork } from './works.ts';

describeInBrowser('the days', (pages) => {
  it('are planned from people and hours that were entered, and kept, moved and taken away', async () => {
    await nobodyHere();
    const page = await pages.atDesk('/week');
    await page.getByRole('heading', { name: 'Nobody has said who is here when' }).waitFor();
    await expectSoundScreen(page, 'a week without people');
    await page.getByRole('link', { name: 'Enter people and hours' }).click();

    await page.getByRole('button', { name: 'Add a person' }).click();
    await page.getByLabel('Time zone of the room').fill('Saltreach/Creek');
    const room = page.getByRole('group', { name: 'The room is open' });
    const printer = page.getByRole('group', { name: 'Person 1' });
    await printer.getByLabel('Initials').fill('P.R.');
    for (const day of ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday']) {
      await room.getByLabel(day).fill('8-20');
      await printer.getByLabel(day).fill('8-20');
    }
    await page.getByRole('button', { name: 'Save people and hours' }).click();
    await page.getByText('A time zone such as Europe/London.').waitFor();
    await page.getByText('A name or what they are here.').waitFor();
    await expectSoundScreen(page, 'hours that can’t be');
    await page.getByRole('button', { name: 'Add a stage' }).click();
    await page.getByLabel('Stage', { exact: true }).selectOption('roll-up');
    const rolling = page.getByRole('group', { name: 'How long: roll up' });
    await rolling.getByLabel('At least').fill('50');
    await rolling.getByLabel('At most').fill('30');
    await page.getByText('At most is less than at least.').waitFor();
    await expectSoundScreen(page, 'a stage that can’t take so long');
    await rolling.getByLabel('At most').fill('80');
    await page.getByLabel('Time zone of the room').fill('Europe/London');
    await printer.getByLabel('Name').fill('the printer');
    await page.getByRole('button', { name: 'Save people and hours' }).click();
    await page.getByText('Saved.').waitFor();
    const kept = (await (await fetch(`${inject('address')}/api/studio`)).json()) as StudioSettings;
    expect(kept.times).toEqual([{ stage: 'roll-up', lowMinutes: 50, highMinutes: 80, people: 1 }]);

    const work = await startedWork('S-139', { title: 'Ebb', stage: 'rolled-up' });
    await page.goto(`${inject('address')}/works/${work.id}/days`);
    await page.getByRole('heading', { name: 'By when must it be there?' }).waitFor();
    // signatures want two people
    await page.getByText(/^Nobody has given a deadline yet\. If it had to be there by /).waitFor();
    await page.getByText('Good-to-print can’t be reached', { exact: true }).waitFor();
    await page.getByText('no two are ever here together').first().waitFor();
    await expectSoundScreen(page, 'a plan that can’t be kept');
    await page.getByLabel('What must be done').selectOption('proofs until steady');
    await page.getByRole('heading', { name: /^Start by .*: trial proofs$/ }).waitFor();
    await expectSoundScreen(page, 'a plan of days');
    await page.getByRole('button', { name: 'Keep this deadline' }).click();
    await page.getByRole('button', { name: 'This deadline is kept' }).waitFor();

    await page.getByLabel('What must be done').selectOption('edition');
    await page.getByRole('heading', { name: 'Edition can’t be reached' }).waitFor();
    const hours = page.getByRole('group', { name: 'How many hours: edition' });
    await hours.getByLabel('At least').fill('3');
    await hours.getByLabel('At most').fill('6');
    await page.getByText(/^3 h to 6 h, two people/).waitFor();

    await page.goto(`${inject('address')}/works`);
    await page.getByText(/proofs until steady by/).waitFor();
    await page.getByRole('link', { name: 'Week' }).click();
    await page.getByRole('link', { name: /Ebb/ }).waitFor();
    await expectSoundScreen(page, 'the week');
    const sheet = await page.getByRole('link', { name: 'Week sheet, PDF' }).getAttribute('href');
    expect((await fetch(inject('address') + sheet)).headers.get('content-type')).toBe('application/pdf');
    await page.getByRole('link', { name: /Ebb/ }).click();
    await page.getByRole('button', { name: 'Take the deadline away' }).click();
    await page.getByRole('button', { name: 'Keep this deadline' }).waitFor();

    // a stage that is behind is told so, is not kept, and leads to the next
    await page.getByLabel('What must be done').selectOption('first etch');
    await page.getByText('That is done already on this stone: there is nothing to plan for it.').waitFor();
    expect(await page.getByRole('button', { name: 'Keep this deadline' }).count()).toBe(0);
    await expectSoundScreen(page, 'days for a stage that is behind');
    await page.getByRole('button', { name: 'Plan the next stage: washout' }).click();
    expect(await page.getByLabel('What must be done').inputValue()).toBe('washout');
  });
});

/** The server is shared with other checks: whoever ran before, nobody is here now. */
async function nobodyHere(): Promise<void> {
  const address = `${inject('address')}/api/studio`;
  const { version } = (await (await fetch(address)).json()) as { version: number };
  expect(version, 'no other check describes the room').toBe(0);
}
