import { mkdtemp, readdir, readFile, rm, stat, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished, vi } from 'vitest';
import { describeInBrowser, desk, phone } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky, startedWork } from './works.ts';

vi.setConfig({ testTimeout: 240_000 });

/** Pictures of a screen at both sizes, for a person to look at. */
async function pictured(page: Page, name: string): Promise<void> {
  if (!process.env.PICTURES) return;
  for (const [size, word] of [
    [phone, 'phone'],
    [desk, 'desk'],
  ] as const) {
    await page.setViewportSize(size);
    await page.screenshot({ path: `${process.env.PICTURES}/${name}-${word}.png`, fullPage: true });
  }
}

describeInBrowser('keeping', (pages) => {
  it('daily copies are sent to a folder, made, read back and found damaged on screen', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'stonetone-copies-'));
    const page = await pages.atDesk('/');
    onTestFinished(async () => {
      await fetch(`${inject('address')}/api/copies/folder`, {
        method: 'PUT',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ folder: null }),
      });
      await rm(folder, { recursive: true, force: true });
    });
    await page.getByRole('link', { name: 'Copies and labels' }).click();
    await page.getByRole('heading', { name: 'No copies are made' }).waitFor();
    await expectSoundScreen(page, 'no copies yet');
    await pictured(page, 'keeping-empty');
    await page.getByRole('button', { name: 'Send copies there' }).click();
    await page.getByText('A folder is needed.').waitFor();
    const place = page.getByLabel('Folder on this machine');
    await place.fill(join(folder, 'not there'));
    await page.getByRole('button', { name: 'Send copies there' }).click();
    await page.getByRole('alert').getByText('it is not there').waitFor();
    await expectSoundScreen(page, 'a folder that is not there');
    await place.fill(folder);
    await page.getByRole('button', { name: 'Send copies there' }).click();
    await page.getByRole('heading', { name: /^Copied whole on/ }).waitFor();
    await page.getByText(/^whole, with \d+ photograph/).waitFor();
    const [name] = await readdir(folder);
    const file = join(folder, name!);
    const before = (await stat(file)).ino;
    await page.getByRole('button', { name: 'Copy now' }).click();
    await expect.poll(async () => (await stat(file)).ino, { timeout: 180_000 }).not.toBe(before);
    await page.getByRole('button', { name: 'Copy now' }).waitFor();
    await expectSoundScreen(page, 'copies');
    await pictured(page, 'keeping-copies');
    await truncate(file, (await stat(file)).size >> 1);
    await page.getByRole('button', { name: /^Read it back/ }).click();
    await page.getByText(/ends too early, after/).waitFor();
    await page.getByRole('heading', { name: 'No copy is known to be whole' }).waitFor();
    await pictured(page, 'keeping-damaged');
    await page.getByText('Another folder, or no more copies').click();
    await page.getByRole('button', { name: 'Make no more copies' }).click();
    await page.getByRole('heading', { name: 'No copies are made' }).waitFor();
  });

  it('a copy that failed is told with the last good one', async () => {
    const page = await pages.onPhone('/leaving');
    const file = '/media/copies/stonetone-2026-11-25.tar';
    const check = {
      at: '2026-11-25T03:00:30.000Z',
      failure: null,
      madeAt: '2026-11-25T03:00:00.000Z',
      photographs: 412,
      concerns: ['photographs/ab/abcd.jpeg is gone from the data folder.'],
    };
    const state = {
      folder: '/media/copies',
      lastGood: { file, madeAt: check.madeAt },
      notMade: {
        at: '2026-11-26T03:00:00.000Z',
        failure: {
          code: 'disk-full',
          message: 'The disk of /media/copies takes nothing more (ENOSPC): nothing was left there.',
          remedy: 'Free space on it, or choose a place on another disk.',
        },
      },
      busy: { act: 'copying', day: '2026-11-26', since: '2026-11-26T09:00:00.000Z', bytes: 1_250_000_000 },
      copies: [
        { day: '2026-11-25', file, bytes: 4_800_000_000, check },
        { day: '2026-11-24', file: file.replace('25', '24'), bytes: 4_700_000_000, check: null },
      ],
      keeps: { days: 7, weeks: 4, months: 12 },
      freeBytes: 120_000_000,
      sameDisk: true,
    };
    await page.route('**/api/copies', (route) => route.fulfill({ json: state }));
    await page.goto(new URL('/keeping', page.url()).href);
    await page.getByRole('heading', { name: 'The last copy could not be made' }).waitFor();
    await page.getByText(/Free space on it.*The last good copy is of 25 Nov/).waitFor();
    await page.getByText('Copying, 1.3 GB written; the last copy was 4.8 GB …').waitFor();
    await page.getByText('The copies lie on the disk that holds the records.').waitFor();
    await page.getByText('not read back since Stonetone was started').waitFor();
    await expectSoundScreen(page, 'a copy that failed');
    await pictured(page, 'keeping-failed');
  });

  it('the records are taken out as tables whose columns are told; what fails is said', async () => {
    const page = await pages.atDesk('/keeping');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Take the records out' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('stonetone-export.zip');
    const packed = await readFile(await download.path());
    expect(packed.subarray(0, 2).toString()).toBe('PK');
    await page.getByRole('link', { name: 'What each column means' }).click();
    await page.getByRole('heading', { name: 'What the tables hold' }).waitFor();
    await page
      .locator('summary')
      .filter({ hasText: /^Stones ?stones/ })
      .click();
    await page.getByRole('row', { name: /widthMm mm width/ }).waitFor();
    await expectSoundScreen(page, 'the columns');
    await pictured(page, 'columns');
    await page.route('**/api/export.zip', (route) => route.abort());
    await page.goBack();
    await page.getByRole('button', { name: 'Take the records out' }).click();
    await page.getByRole('alert').getByText('Stonetone does not answer.').waitFor();
  });

  it('a protocol of another studio is brought in, read, and laid beside a work; a bad file is told', async () => {
    const { id } = await startedWork('S-391', {
      title: 'Kept Mudbank',
      zones: [sky(), post],
      stage: 'first-etch',
    });
    const written = (await (await fetch(`${inject('address')}/api/works/${id}/protocol.json`)).json()) as {
      title: string;
    };
    const page = await pages.atDesk('/protocols');
    await page.getByText('None was brought in yet').waitFor();
    await expectSoundScreen(page, 'no protocols yet');
    await page.getByRole('link', { name: 'Bring one in' }).click();
    const give = (text: string) =>
      page
        .getByLabel('Choose the file')
        .last()
        .setInputFiles({ name: 'protocol.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await give('%PDF-1.7');
    await page.getByRole('alert').getByText('This file is not JSON.').waitFor();
    await give('[]');
    await page.getByRole('alert').getByText('it names no schema').waitFor();
    await give(JSON.stringify({ ...written, schema: 'stonetone/protocol/99' }));
    await page
      .getByRole('alert')
      .getByText(/stonetone\/protocol\/99/)
      .waitFor();
    await give(JSON.stringify({ ...written, stone: { ...(written as object), widthMm: 'wide' } }));
    await page.getByRole('alert').getByText('a text is missing at stone.name').waitFor();
    await expectSoundScreen(page, 'a protocol that is none');
    await pictured(page, 'protocol-trouble');
    await give(JSON.stringify({ ...written, title: 'Reeds of another shed' }));
    await page.getByRole('heading', { name: 'Reeds of another shed' }).waitFor();
    await page.getByRole('heading', { name: 'What was not recorded' }).waitFor();
    await expectSoundScreen(page, 'a protocol');
    await pictured(page, 'protocol');
    await page.getByLabel('Beside a work of yours').selectOption({ label: 'Kept Mudbank, on S-391' });
    const table = page.getByRole('table', { name: 'Stone and plan' });
    await table.getByRole('columnheader', { name: 'Yours, Kept Mudbank' }).waitFor();
    await table.getByRole('row', { name: /^Stone 400 × 500 mm 400 × 500 mm/ }).waitFor();
    await page.getByText(/^Told by neither: its colour, etch table/).waitFor();
    await expectSoundScreen(page, 'a protocol beside a work');
    await pictured(page, 'protocol-beside');
    await page.getByRole('link', { name: 'Protocols of other studios' }).click();
    await page.getByRole('link', { name: /Reeds of another shed/ }).waitFor();
    await expectSoundScreen(page, 'the protocols');
    await pictured(page, 'protocols');
  });

  it('labels are chosen from where the things live, and stand on one sheet', async () => {
    const { stoneId } = await startedWork('S-392', { title: 'Labelled Mudbank', zones: [], stage: 'drawn' });
    const page = await pages.atDesk(`/stones/${stoneId}`);
    await page.getByRole('link', { name: 'a label for it' }).click();
    await page.getByRole('heading', { name: 'One label on one page' }).waitFor();
    const stones = page.getByRole('group', { name: 'Stones' });
    expect(await stones.getByLabel('S-392', { exact: true }).isChecked()).toBe(true);
    await expectSoundScreen(page, 'labels');
    await pictured(page, 'labels');
    const sheet = page.getByRole('link', { name: 'Make the sheet' });
    const address = new URL((await sheet.getAttribute('href'))!, page.url());
    const answer = await fetch(address);
    expect(answer.headers.get('content-type')).toContain('application/pdf');
    await stones.getByText('S-392', { exact: true }).click();
    await page.getByRole('heading', { name: 'Choose what labels are wanted for' }).waitFor();
    expect(await page.getByRole('button', { name: 'Make the sheet' }).isDisabled()).toBe(true);
  });
});
