import { readFileSync } from 'node:fs';
import { expect, inject, it } from 'vitest';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import type { Zone } from '../../src/records/zone.ts';
import { picture } from '../cli/stonetone.ts';
import { drawFinger } from './finger.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

async function post<T>(path: string, body?: object): Promise<T> {
  const answer = await fetch(inject('address') + path, {
    method: 'POST',
    ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(await answer.text());
  return (await answer.json()) as T;
}

async function uploaded(name: string): Promise<string> {
  const form = new FormData();
  form.append('photograph', new Blob([new Uint8Array(readFileSync(picture(name)))]), name);
  const answer = await fetch(`${inject('address')}/api/photographs`, { method: 'POST', body: form });
  return ((await answer.json()) as { id: string }).id;
}

/** A test stone whose patches are the zones of a kept pair, read. */
async function readStone(name: string): Promise<TestStone> {
  const kept = JSON.parse(readFileSync(picture('measured.json'), 'utf8'));
  const zones = JSON.parse(readFileSync(picture('measured-zones.json'), 'utf8')) as Zone[];
  const patches = zones.map(({ id, medium, polygonMm }) => ({
    id,
    square: id,
    polygonMm,
    treatment: { medium },
  }));
  const stone = await post<TestStone>('/api/test-stones', {
    name,
    sizeMm: [400, 300],
    factors: [{ name: 'medium' }],
    patches,
    drawn: { photograph: await uploaded('measured-stone.jpg'), corners: kept.stoneCorners },
    prints: [
      {
        id: 'first',
        name: 'First print',
        photograph: await uploaded('measured-print.jpg'),
        corners: kept.proofCorners,
      },
    ],
  });
  await post(`/api/test-stones/${stone.id}/readings`);
  for (;;) {
    const answer = await fetch(`${inject('address')}/api/test-stones/${stone.id}/reading`);
    const reading = (await answer.json()) as TestStoneReading;
    if (reading.judgedBy !== null) return stone;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

describeInBrowser('test stones', (pages) => {
  it('one made by hand is entered, and its rows are typed at once', async () => {
    const page = await pages.atDesk('/test-stones/new');
    await page.getByLabel('Name').fill('T-81');
    await page.getByLabel('Rows').fill('2');
    await page.getByLabel('Columns').fill('3');
    await expectSoundScreen(page, 'a new test stone');
    await page.getByRole('button', { name: 'Enter 6 squares' }).click();
    await page.getByRole('heading', { name: 'What did each patch get?' }).waitFor();
    await page.getByRole('button', { name: /^row 2, second: / }).click();
    await page.getByLabel('etch', { exact: true }).fill('gum');
    await expectSoundScreen(page, 'patches of a test stone');
    await page.getByRole('button', { name: 'Save the patches' }).click();
    await page.getByRole('status').getByText('Saved.').waitFor();
    const id = new URL(page.url()).pathname.split('/')[2]!;
    const answer = await fetch(`${inject('address')}/api/test-stones/${id}`);
    const { patches } = (await answer.json()) as TestStone;
    expect(patches.map(({ treatment }) => treatment.etch ?? null)).toEqual([
      ...[null, null, null],
      ...['gum', 'gum', 'gum'],
    ]);
    await page.getByRole('link', { name: 'On to the photographs' }).click();
    await page.getByRole('heading', { name: 'The drawn stone and its prints' }).waitFor();
    await expectSoundScreen(page, 'photographs of a test stone');
    await page.getByRole('link', { name: 'Answer' }).click();
    await page.getByRole('heading', { name: 'No answer yet' }).waitFor();
    await expectSoundScreen(page, 'no answer yet');
    await page.goto(`${inject('address')}/test-stones`);
    await page.getByRole('link', { name: /T-81/ }).waitFor();
    await expectSoundScreen(page, 'the test stones');
  });

  it('patches are drawn over the photograph, named, sized, taken back, and not lost by a reload', async () => {
    const { stoneCorners } = JSON.parse(readFileSync(picture('measured.json'), 'utf8'));
    const { id } = await post<TestStone>('/api/test-stones', {
      name: 'T-84',
      sizeMm: [400, 300],
      factors: [{ name: 'medium' }],
      drawn: { photograph: await uploaded('measured-stone.jpg'), corners: stoneCorners },
    });
    const page = await pages.atDesk(`/test-stones/${id}/patches`);
    await page.getByRole('heading', { name: 'Where does each patch lie?' }).waitFor();
    await page.locator('.stone-board-area img').first().waitFor();
    await expectSoundScreen(page, 'no patch drawn yet');
    const drawn = async (kind: string) => {
      await page.getByRole('button', { name: kind }).click();
      for (const key of ['0', 'Enter', 'ArrowRight', 'Enter', 'ArrowDown', 'Enter', 'Shift+Enter', '0'])
        await page.keyboard.press(key);
    };
    await drawn('Draw a patch');
    await page.getByLabel('It goes by').fill('moon');
    await page.getByLabel('It goes by').press('Enter');
    const place = page.getByRole('region', { name: 'Where moon lies' });
    await place.getByLabel('Width').fill('40');
    await page.getByLabel('medium', { exact: true }).fill('wash');
    await expectSoundScreen(page, 'a patch in hand');
    // A finger's way: the letter carries the whole patch.
    // The board may still be settling after its sizes were tried: a letter that was missed is taken again.
    await expect
      .poll(async () => {
        const letter = (await page.locator('.zone-mark .zone-letter').boundingBox())!;
        const [x, y] = [letter.x + letter.width / 2, letter.y + letter.height / 2];
        await page.mouse.move(x, y);
        await page.mouse.down();
        await page.mouse.move(x - 120, y, { steps: 4 });
        await page.mouse.up();
        return place.getByLabel('From the left').inputValue();
      })
      .not.toBe('200');
    await page.getByRole('button', { name: 'Take back' }).click();
    await expect.poll(() => place.getByLabel('From the left').inputValue()).toBe('200');
    await drawn('Draw a stop-out');
    await page.getByText('Not saved yet; a reload, or another page, keeps it.').waitFor();
    await page.getByRole('link', { name: 'Reading', exact: true }).click();
    await page.getByRole('link', { name: 'Patches, not saved' }).waitFor();
    await page.reload();
    await page.getByRole('link', { name: 'Patches, not saved' }).click();
    await page.getByText('What was unsaved at the last visit is here again.').waitFor();
    await page.getByRole('button', { name: /1: stop-out/ }).waitFor();
    await page.getByRole('button', { name: 'Save the patches' }).click();
    await page.getByRole('status').getByText('Saved.').waitFor();
    const answer = await fetch(`${inject('address')}/api/test-stones/${id}`);
    const { patches } = (await answer.json()) as TestStone;
    expect(patches).toMatchObject([
      { id: 'moon', intention: 'image', treatment: { medium: 'wash' } },
      { id: '1', intention: 'stop-out', treatment: {} },
    ]);
    const across = patches[0]!.polygonMm.map(([left]) => left);
    expect(Math.max(...across) - Math.min(...across)).toBe(40);
  });

  it('a patch is made larger by its corner, with a finger, and taken back in one step', async () => {
    const { id } = await post<TestStone>('/api/test-stones', {
      name: 'T-86',
      sizeMm: [400, 300],
      factors: [{ name: 'medium' }],
      patches: [
        {
          id: 'star',
          square: 'star',
          polygonMm: [
            [100, 80],
            [180, 80],
            [180, 140],
            [100, 140],
          ],
          treatment: { medium: 'wash' },
        },
      ],
    });
    const page = await pages.onPhone(`/test-stones/${id}/patches`);
    await page.getByRole('button', { name: 'Draw and move patches' }).tap();
    await page.locator('.zone-mark .zone-letter').tap();
    const place = page.getByRole('region', { name: 'Where star lies' });
    await place.waitFor();
    await expectSoundScreen(page, 'a patch with its corner');
    const corner = page.locator('.size-corner circle');
    await corner.scrollIntoViewIfNeeded();
    const box = (await corner.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    // The outline's own points, in px: its box on the page is wider by the line.
    const outline = (await page.locator('.zone-mark .zone-line').getAttribute('points'))!;
    const across = outline.split(' ').map((point) => Number(point.split(',')[0]));
    const pxPerMm = (Math.max(...across) - Math.min(...across)) / 80;
    await drawFinger(page, [x, y], [x + 15, y + 5], [x + 40, y + 20]);
    const sizes = async () =>
      Promise.all(['Width', 'Height'].map(async (of) => Number(await place.getByLabel(of).inputValue())));
    // The corner went where the finger did, and nowhere else.
    await expect.poll(async () => (await sizes())[0]! - 80).toBeCloseTo(40 / pxPerMm, 0);
    await expect.poll(async () => (await sizes())[1]! - 60).toBeCloseTo(20 / pxPerMm, 0);
    expect(await place.getByLabel('From the left').inputValue()).toBe('100');
    await page.getByRole('button', { name: 'Take back' }).tap();
    await expect.poll(sizes).toEqual([80, 60]);
  });

  it('one that is read is looked at, put right by hand, read blind and answers', async () => {
    const { id, patches } = await readStone('T-82');
    const page = await pages.atDesk(`/test-stones/${id}`);
    await page.getByRole('heading', { name: /patches held/ }).waitFor();
    await page.getByRole('button', { name: / moon: / }).click();
    await page.getByText('Put it right by hand').click();
    const form = page.getByRole('form', { name: 'Put moon right' });
    await form.getByText('lost', { exact: true }).click();
    await form.getByLabel('Who says so').fill('P.R.');
    await form.getByLabel('Why').fill('a smear of ink lay there');
    await form.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText('P.R.: lost, a smear of ink lay there').waitFor();
    await expectSoundScreen(page, 'what was read of a test stone');
    await page.getByRole('link', { name: 'By eye' }).click();
    await page.getByLabel('Who reads').fill('J.O.');
    await page.getByRole('button', { name: 'Begin a blind reading' }).click();
    await page.getByText(`0 of ${patches.length} told`).waitFor();
    await expectSoundScreen(page, 'a blind reading');
    await page.getByRole('button', { name: 'Held', exact: true }).click();
    await page.getByText(`1 of ${patches.length} told`).waitFor();
    await page.getByRole('button', { name: 'Go on another time' }).click();
    // patches come shuffled: the first may be one that the camera could not judge
    await page
      .getByText(/the camera and J\.O\.: alike in [01] of 1 patches|No two readings share a patch yet/)
      .waitFor();
    await expectSoundScreen(page, 'readings by eye');
    await page.getByRole('link', { name: 'Answer' }).click();
    await page.getByRole('heading', { name: 'What each got, and how it held' }).waitFor();
    await expectSoundScreen(page, 'what a test stone answers');
  });

  it('a ruler in the photograph of the stone tells whether the size is right', async () => {
    const { stoneCorners } = JSON.parse(readFileSync(picture('measured.json'), 'utf8'));
    const { id } = await post<TestStone>('/api/test-stones', {
      name: 'T-83',
      sizeMm: [400, 300],
      drawn: { photograph: await uploaded('measured-stone.jpg'), corners: stoneCorners },
    });
    const page = await pages.atDesk(`/test-stones/${id}/photographs`);
    await page.getByRole('button', { name: 'A ruler in the picture?' }).click();
    await page.getByRole('heading', { name: 'Set two marks on the ruler' }).waitFor();
    const keep = page.getByRole('button', { name: 'Keep the ruler' });
    expect(await keep.isDisabled(), 'without a length').toBe(true);
    await page.getByLabel('Between them, as the ruler tells it').fill('50');
    await page.getByRole('button', { name: /^Mark 2: another mark/ }).press('ArrowLeft');
    await expectSoundScreen(page, 'the ruler of a test stone');
    await keep.click();
    await page.getByText(/The ruler’s 50 mm measure/).waitFor();
    await expectSoundScreen(page, 'a ruler that disagrees');
    const kept = await (await fetch(`${inject('address')}/api/test-stones/${id}`)).json();
    expect((kept as TestStone).ruler).toMatchObject({ lengthMm: 50 });
    await page.getByRole('button', { name: 'Set the ruler anew' }).click();
    await page.getByRole('button', { name: 'There is no ruler' }).click();
    await page.getByRole('button', { name: 'A ruler in the picture?' }).waitFor();
  });
});
