import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { Edition, LedgerEntry } from '../../src/records/edition.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { startedWork } from './works.ts';

describeInBrowser('an edition', (pages) => {
  it('is planned from its work, printed, looked at when dry, numbered and documented', async () => {
    const work = await startedWork('S-61');
    const page = await pages.atDesk(`/works/${work.id}/edition`);
    await page.getByRole('heading', { name: 'How many prints shall there be?' }).waitFor();
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

    await page.getByRole('link', { name: 'Drift and numbers' }).click();
    await page.getByRole('heading', { name: 'Nothing is printed yet' }).waitFor();
    await expectSoundScreen(page, 'an edition with nothing printed');
    await page.getByRole('link', { name: 'To the press' }).click();
    await page.getByRole('heading', { name: 'Print 1' }).waitFor();
    await press(page, 'Slab charged');
    for (let n = 1; n <= 6; n++) {
      await press(page, 'Good');
      await page.getByRole('heading', { name: n === 6 ? 'All good ones' : `Print ${n + 1}` }).waitFor();
    }
    await expectSoundScreen(page, 'the ledger at the press');
    await press(page, 'Torn');
    await press(page, 'stuck');
    await page.getByText('Slab charged 7 prints ago.').waitFor();
    await logged(id, 8);
    await page.getByRole('link', { name: 'To the edition' }).click();
    await page.getByRole('link', { name: 'Drift and numbers' }).click();

    await page.getByText('Write down how a print reads').click();
    await page.getByLabel('Its darks').fill('0.82');
    await page.getByLabel('Minutes since it was pulled').fill('1500');
    await page.getByRole('button', { name: 'Log the reading' }).click();
    await page.getByText('Under 8 prints there are distances only').waitFor();
    await page
      .getByRole('group', { name: /^Impression 1 when dry/ })
      .getByText('second')
      .click();
    await page.getByText('1 of 6 are checked dry.').waitFor();
    await page.getByRole('button', { name: 'Number the good ones in order' }).click();
    await page.getByRole('button', { name: 'Destroy the rest' }).click();
    await page.getByLabel('Number of impression 3').fill('1');
    await page.getByText('1/3 is given twice: to impression 2 and to impression 3.').waitFor();
    await expectSoundScreen(page, 'a number given twice');
    await page.getByLabel('Number of impression 3').fill('2');
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
    await press(page, 'Pause, gummed');
    await page.getByRole('heading', { name: 'Paused, under gum' }).waitFor();
    const undo = page.getByRole('button', { name: /^Hold to undo/ });
    await undo.dispatchEvent('pointerdown');
    await undo.dispatchEvent('pointerup');
    await page.clock.fastForward(1000);
    await page.getByRole('heading', { name: 'Paused, under gum' }).waitFor();
    await undo.dispatchEvent('pointerdown');
    await page.clock.fastForward(1000);
    await page.getByRole('heading', { name: 'Gum the stone' }).waitFor();
    expect((await logged(id, 5)).at(-1)!.kind).toBe('undo');
  });
});

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
