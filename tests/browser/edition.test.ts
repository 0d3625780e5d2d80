import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { Edition } from '../../src/records/edition.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import { describeInBrowser, desk } from './pages.ts';
import { keptPair } from './pair.ts';
import { printedWork, pulled, sent, uploaded } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';
import { startedWork } from './works.ts';

describeInBrowser('an edition', (pages) => {
  it('is planned from its work, printed, looked at when dry, numbered and documented', async () => {
    const work = await startedWork('S-61');
    const page = await pages.atDesk(`/works/${work.id}/edition`);
    await page.getByRole('heading', { name: 'How many prints shall there be?' }).waitFor();
    await page.getByText('No pull is good to print:').waitFor();
    await expectSoundScreen(page, 'a work without an edition');
    await page.getByLabel('Numbered prints').fill('3');
    await page.getByRole('button', { name: 'Plan the edition' }).click();
    await page.getByRole('heading', { name: '13 sheets for 3 prints' }).waitFor();
    await page.getByText('Paper, ink, rack').click();
    for (const [field, text] of [
      ['Sheet as bought, one side', '560'],
      ['Sheet, other side', '760'],
      ['Torn to, one side', '380'],
      ['Torn to, other side', '280'],
      ['Inked area', '250'],
      ['Places on the rack', '12'],
    ] as const) {
      await page.getByLabel(field, { exact: true }).fill(text);
    }
    await page.getByText('Approval proof', { exact: true }).click();
    await page.getByLabel('Approval proof: lights').fill('0.1');
    await page.getByLabel('Approval proof: darks').fill('0.8');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByText('The rack has 12 places for 13 prints').waitFor();
    await page.locator('.edition-chart svg').waitFor();
    await expectSoundScreen(page, 'an edition planned');
    const id = page.url().split('/').at(-1)!;

    await page.getByRole('link', { name: 'Its prints', exact: true }).click();
    await page.getByRole('heading', { name: 'Nothing is printed yet' }).waitFor();
    await expectSoundScreen(page, 'an edition with nothing printed');
    await page.getByRole('link', { name: 'To the press' }).click();
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    await page.getByText('No pull is good to print:').waitFor();
    await press(page, 'Slab charged');
    for (let n = 1; n <= 6; n++) {
      await press(page, 'Good');
      await page
        .getByRole('heading', { name: n === 6 ? 'All 6 are printed. Let them dry.' : `Print ${n + 1}` })
        .waitFor();
    }
    await expectLit(page, 'Gummed');
    await expectSoundScreen(page, 'the ledger at the press');
    await press(page, 'Torn');
    await press(page, 'stuck');
    await page.getByText('Slab charged 7 prints ago.').waitFor();
    await logged(id, 8);
    await page.getByRole('link', { name: 'To the edition' }).click();
    await page.getByRole('link', { name: 'Its prints', exact: true }).click();

    await page.getByText('No photograph: type how a print reads').click();
    await page.getByLabel('Its darks').fill('0.82');
    await page.getByLabel('Minutes since it was pulled').fill('1500');
    await page.getByRole('button', { name: 'Log the reading' }).click();
    await page.getByText('Under 8 prints there are distances only').waitFor();
    await page
      .getByRole('group', { name: /^Print 1 when dry/ })
      .getByText('second')
      .click();
    await page.getByText('1 of 6 are checked dry.').waitFor();
    await page.getByRole('button', { name: 'Number the good ones in order' }).click();
    await page.getByRole('button', { name: 'Destroy the rest' }).click();
    await page.getByLabel('Number of print 3').fill('1');
    await page.getByText('1/3 is given twice: to print 2 and to print 3.').waitFor();
    await expectSoundScreen(page, 'a number given twice');
    await page.getByLabel('Number of print 3').fill('2');
    await page.getByRole('button', { name: 'Save the numbers' }).click();
    await page.getByText('All is saved.').waitFor();
    await expectSoundScreen(page, 'an edition numbered');
    const edition = await read<Edition>(`/api/editions/${id}`);
    expect(edition.prints.map(({ kind, number }) => `${kind} ${number}`).sort()).toEqual([
      'artist 1',
      'destroyed null',
      'destroyed null',
      'edition 1',
      'edition 2',
      'edition 3',
      'printer 1',
    ]);
    await page.getByRole('link', { name: 'Write down when they were signed' }).click();
    await page.getByRole('heading', { name: 'How far it is' }).waitFor();
    await page.getByRole('link', { name: 'Write down when they were signed' }).click();
    await page.getByLabel('Signed on').fill('2026-03-06');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.locator('.button.act', { hasText: 'PDF, A4' }).waitFor();
    await expectSoundScreen(page, 'an edition signed');
    const sheet = await fetch(`${inject('address')}/api/editions/${id}/documentation.pdf`);
    expect(sheet.headers.get('content-type')).toBe('application/pdf');
  });

  it('logs at the press while the server is out of reach, asks for gum, and takes back what was held', async () => {
    const work = await startedWork('S-62');
    const entered = await fetch(`${inject('address')}/api/works/${work.id}/editions`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ title: 'Low Water', size: 5 }),
    });
    const { id } = (await entered.json()) as Edition;
    const page = await pages.onPhone('/works');
    await page.clock.install();
    await page.goto(`${inject('address')}/editions/${id}/press`);
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    for (const target of await page.locator('.bench-target').all()) {
      expect((await target.boundingBox())!.height).toBeGreaterThanOrEqual(64);
    }
    await page.context().setOffline(true);
    for (const name of ['Good', 'Good', 'Slab charged']) {
      await press(page, name);
      await page.clock.fastForward(700);
    }
    await page.getByText('3 not sent yet. Kept here, sent in order later: go on.').waitFor();
    await expectSoundScreen(page, 'the press out of reach of the server');
    await page.context().setOffline(false);
    await page.clock.fastForward(2500);
    const entries = await logged(id, 3);
    expect(entries.map(({ kind }) => kind)).toEqual(['impression', 'impression', 'charged']);

    await page.clock.fastForward(16 * 60_000);
    await page.getByRole('heading', { name: 'Gum the stone' }).waitFor();
    await expectSoundScreen(page, 'a stone that stood too long');
    await expectLit(page, 'Gummed');
    await page.keyboard.press('PageDown');
    await page.getByRole('heading', { name: 'Paused, under gum' }).waitFor();
    await expectLit(page, 'Go on printing');
    const undo = page.getByRole('button', { name: /^Hold to take back/ });
    await undo.dispatchEvent('pointerdown');
    await undo.dispatchEvent('pointerup');
    await page.clock.fastForward(1000);
    await page.getByRole('heading', { name: 'Paused, under gum' }).waitFor();
    await undo.dispatchEvent('pointerdown');
    await page.clock.fastForward(1000);
    await page.getByRole('heading', { name: 'Gum the stone' }).waitFor();
    expect((await logged(id, 5)).at(-1)!.kind).toBe('undo');
  });

  it('at the press keys and a pedal log, undo is held, reasons are free, and a second screen follows', async () => {
    const work = await startedWork('S-63');
    const { id } = await sent<Edition>('POST', `/api/works/${work.id}/editions`, {
      title: 'Low Water',
      size: 5,
    });
    const page = await pages.atDesk(`/editions/${id}/press`);
    const other = await pages.onPhone(`/editions/${id}/press`);
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    await other.getByRole('heading', { name: 'Print 1' }).waitFor();
    await page.getByRole('button', { name: 'Who logs?' }).click();
    await expectSoundScreen(page, 'who logs at the press');
    await page.getByLabel('Somebody else: initials are enough').fill('J.O.');
    await page.getByRole('button', { name: 'That is me' }).click();
    await page.getByRole('button', { name: 'J.O. logs' }).waitFor();
    for (const [key, n] of [
      ['PageDown', 2],
      ['ArrowRight', 3],
      [' ', 4],
    ] as const) {
      await page.keyboard.press(key, { delay: 30 });
      await page.getByRole('heading', { name: `Print ${n}` }).waitFor();
      await new Promise((resolve) => setTimeout(resolve, 520));
    }
    await other.getByRole('heading', { name: 'Print 4' }).waitFor();
    await page.keyboard.press('ArrowLeft');
    await new Promise((resolve) => setTimeout(resolve, 900));
    await page.getByRole('heading', { name: 'Print 4' }).waitFor();
    await page.keyboard.press('ArrowLeft', { delay: 950 });
    await page.getByRole('heading', { name: 'Print 3' }).waitFor();
    await press(page, 'Second');
    await expectSoundScreen(page, 'why a print is a second');
    await page.getByLabel('Something else, in words').fill('hair on the slab');
    await page.getByRole('button', { name: 'Log these words' }).click();
    await other.getByRole('heading', { name: 'Print 4' }).waitFor();
    const entries = await logged(id, 5);
    expect(entries.at(-1)).toMatchObject({
      actor: 'J.O.',
      payload: { verdict: 'second', reason: 'hair on the slab' },
    });
    await expectSoundScreen(other, 'a second screen at the press');
  });

  it('starts from the pull that is good to print, and the press knows of gum that was logged at the bench', async () => {
    const work = await startedWork('S-65', { title: 'Slack' });
    const eye = { lights: 0.1, middles: 0.4, darks: 0.8, who: 'P.R.' };
    for (const number of [1, 2, 3])
      await pulled(work, number, { damp: true, ink: { id: null, words: 'mudbank black' }, eye });
    await sent('POST', `/api/works/${work.id}/approvals`, { pull: 3, artist: 'A.T.', printer: 'P.R.' });
    const page = await pages.onPhone(`/works/${work.id}/edition`);
    await page.getByRole('heading', { name: 'It starts from pull 3, good to print' }).waitFor();
    await page.getByText('Pull 3, good to print, was printed damp.').waitFor();
    await page.getByLabel('Paper', { exact: true }).fill('rag 300');
    await page.getByText('Pull 3, good to print, has rag 250 here.').waitFor();
    await expectSoundScreen(page, 'what an edition starts from');
    await page.getByRole('button', { name: 'Plan the edition' }).click();
    await page.getByRole('heading', { name: '15 sheets for 5 prints' }).waitFor();
    const id = page.url().split('/').at(-1)!;
    expect(await read<Edition>(`/api/editions/${id}`)).toMatchObject({
      paper: { name: 'rag 300', damped: 'yes' },
      ink: 'mudbank black',
      approvedBy: 'A.T., P.R.',
      approval: { lights: 0.1, middles: 0.4, darks: 0.8 },
    });
    await page.getByRole('link', { name: 'To the press' }).click();
    await press(page, 'Good');
    await page.getByText('1 good of 8 wanted, 7 more to pull. 10 of 11 sheets are left.').waitFor();
    await logged(id, 1);
    const run = await sent<{ id: string }>('POST', '/api/runs', { workId: work.id });
    const gummed = { clientId: 'gum S-65', kind: 'gummed', payload: {}, at: new Date().toISOString() };
    await sent('POST', `/api/runs/${run.id}/events`, gummed);
    await page.getByRole('heading', { name: 'Paused, under gum' }).waitFor();
    // the stone grained, every page of the work says so, and none lights a step that cannot be taken
    for (const kind of ['stage-started', 'stage-ended'])
      await sent('POST', `/api/runs/${run.id}/events`, {
        clientId: `${kind} S-65`,
        kind,
        payload: { stage: 'regrain' },
        at: new Date().toISOString(),
      });
    await page.goto(`${inject('address')}/editions/${id}/press`);
    await page.getByText('Grained away:').waitFor();
    expect(await page.locator('.press-verdicts .first').count()).toBe(0);
    for (const view of ['', '/edition', '/proofs']) {
      await page.goto(`${inject('address')}/works/${work.id}${view}`);
      await page.getByText('Grained away:').waitFor();
      if (view !== '') expect(await page.locator('.button.act').count(), view).toBe(0);
    }
    await expectSoundScreen(page, 'the proofs of a work that is grained away');
  });

  it('a print is photographed, read beside the approved pull, and its edition taken off and brought back', async () => {
    const work = await printedWork('S-64');
    const { print } = keptPair('measured');
    const approved = await pulled(work, 1, {
      photographs: [{ photograph: await uploaded(print), ageMinutes: 5 }],
    });
    const { id } = await sent<Edition>('POST', `/api/works/${work.id}/editions`, {
      title: 'Low Water',
      size: 2,
    });
    const page = await pages.onPhone(`/editions/${id}/press`);
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    await press(page, 'Good');
    await page.locator('.print-photograph input').setInputFiles(print);
    const entries = await logged(id, 2);
    expect(entries.at(-1)).toMatchObject({
      kind: 'photographed',
      payload: { photograph: expect.any(String) },
    });

    await page.getByRole('link', { name: 'To the edition' }).click();
    await page.getByText('Approval proof', { exact: true }).click();
    await page.getByLabel('The pull that was approved').selectOption(approved.id);
    await page.getByText('Paper, ink, rack').click();
    await page.getByLabel('Lost at every tear').fill('3');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByRole('link', { name: 'Its prints', exact: true }).click();
    await page.getByLabel('How long after pulling they are photographed').fill('5');
    await page.locator('.print-mark .print-photograph input').setInputFiles(print);
    await page
      .locator('.print-pictures figure')
      .nth(1)
      .getByText(/^read at/)
      .waitFor({ timeout: 180_000 });
    await page
      .locator('.print-pictures .approved')
      .getByText('pull 1, read at 5 min')
      .waitFor({ timeout: 180_000 });
    await page.getByText('Within its bar the truth lies, 19 times of 20.').waitFor();
    await expectSoundScreen(page, 'prints beside the approval proof');
    await page.setViewportSize(desk);
    await expectSoundScreen(page, 'the same at a desk');
    // drawn anew to each width, so that a letter is never shrunk
    for (const width of [desk.width, 700, 390]) {
      await page.setViewportSize({ width, height: 900 });
      const shrunk = () =>
        page.locator('.edition-chart svg').evaluate((chart) => {
          const drawn = Number(chart.getAttribute('width'));
          return chart.getBoundingClientRect().width / drawn;
        });
      await expect.poll(shrunk, { message: `letters at ${width} px` }).toBeCloseTo(1, 2);
    }

    // an impression's corners are set as a pull's are, and the edition is gone back to
    await page.getByRole('link', { name: 'Corners, grey chips' }).click();
    await page.getByRole('button', { name: /^Mark 1/ }).waitFor();
    await expectSoundScreen(page, 'the corners of an impression');
    await page.getByRole('button', { name: 'Keep and read it again' }).click();

    await page.getByRole('link', { name: 'Plan and papers' }).click();
    await page.getByText('Take this edition off its work').click();
    await page.getByRole('button', { name: 'Take it off' }).click();
    await page.getByText('This edition was taken off its work.').waitFor();
    await expectSoundScreen(page, 'an edition taken off its work');
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await page.getByText('Take this edition off its work').waitFor();
    const kept = await read<Edition>(`/api/editions/${id}`);
    expect(kept).toMatchObject({ putBy: false, approvalPullId: approved.id, paper: { tearLossMm: 3 } });
  });
});

async function expectLit(page: Page, name: string): Promise<void> {
  await page.locator('.bench-target.first', { hasText: name }).waitFor();
}

/** Touches a target; another touch within half a second would count as a bounce. */
async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await new Promise((resolve) => setTimeout(resolve, 520));
}

async function read<T>(path: string): Promise<T> {
  return (await (await fetch(inject('address') + path)).json()) as T;
}

/** The ledger once it holds so many entries. */
async function logged(id: string, entries: number): Promise<readonly LedgerEntry[]> {
  const held = async () =>
    (await read<{ entries: readonly LedgerEntry[] }>(`/api/editions/${id}/ledger`)).entries;
  await expect.poll(held, { timeout: 10_000 }).toHaveLength(entries);
  return held();
}
