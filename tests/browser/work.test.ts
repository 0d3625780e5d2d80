import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { enteredStone } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';
import { tabTo } from './tabTo.ts';
import { keptWork, plannedEtch, post, savedWork, sky, startedWork } from './works.ts';

describeInBrowser('a work', (pages) => {
  it('goes from nothing to a planned etch by the keyboard alone', async () => {
    await enteredStone('S-31');
    const page = await pages.atDesk('/works/new');
    await tabTo(page, 'combobox', 'Stone');
    await page.keyboard.type('S-31');
    await tabTo(page, 'textbox', 'Title');
    await page.keyboard.type('Low Water');
    await page.keyboard.press('Enter');

    await page.getByRole('heading', { name: 'Draw the zones of Low Water' }).waitFor();
    await tabTo(page, 'button', 'Draw the first zone');
    await page.keyboard.press('Enter');
    // The cross starts in the middle of the stone: 200 mm across, 250 mm down.
    await page.keyboard.press('0');
    await push(page, 'ArrowLeft', 15);
    await push(page, 'ArrowUp', 15);
    await page.keyboard.press('Enter');
    await push(page, 'ArrowRight', 30);
    await page.keyboard.press('Enter');
    await push(page, 'ArrowDown', 10);
    await page.keyboard.press('0');
    await push(page, 'ArrowDown', 5);
    await page.keyboard.press('0');
    await page.keyboard.press('Enter');
    await push(page, 'ArrowLeft', 30);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Shift+Enter');

    await page.keyboard.type('Sky');
    await tabTo(page, 'combobox', 'Drawn with');
    await page.keyboard.type('crayon #5');
    await tabTo(page, 'button', 'Save the drawing');
    await page.keyboard.press('Enter');
    await tabTo(page, 'link', 'Plan the first etch');
    await page.keyboard.press('Enter');

    await page.getByRole('heading', { name: 'The first etch is not planned yet' }).waitFor();
    await tabTo(page, 'button', 'Make the plan');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^One person can keep this etch/ }).waitFor();
    const row = page.getByRole('row', { name: /Sky.*gum alone/ });
    expect(await row.textContent()).toContain('315 cm²');

    const work = await keptWork(page.url().split('/').at(-2)!);
    expect(work.zones).toMatchObject([
      {
        name: 'Sky',
        medium: 'crayon-5',
        polygonMm: [
          [50, 100],
          [350, 100],
          [350, 205],
          [50, 205],
        ],
      },
    ]);
  });

  it('is drawn with the mouse, mended, undone and done again', async () => {
    const { id } = await startedWork('S-32', { zones: [sky()] });
    const page = await pages.atDesk(`/works/${id}`);
    await page.getByRole('button', { name: 'Draw a zone' }).click();
    for (const place of [
      [100, 250],
      [300, 250],
      [200, 420],
      [100, 250],
    ] as const)
      await page.mouse.click(...(await onBoard(page, place)));
    const drawn = page.getByRole('button', { name: /^B Zone B/ });
    await drawn.waitFor();

    const corner = await onBoard(page, [200, 420]);
    await page.mouse.move(...corner);
    await page.mouse.down();
    await page.mouse.move(corner[0] + 20, corner[1]);
    await page.mouse.move(...(await onBoard(page, [240, 400])));
    await page.mouse.up();
    const across = page.getByRole('textbox', { name: 'Across' });
    await across.waitFor();
    expect(Math.abs(Number(await across.inputValue()) - 240)).toBeLessThan(1);

    await page.getByRole('button', { name: 'Take back' }).click();
    expect(Math.abs(Number(await across.inputValue()) - 200)).toBeLessThan(1);
    // The closing, three points and the beginning of the outline are left to take back.
    await push(page, 'Control+z', 5);
    expect(await drawn.count()).toBe(0);
    await page.getByText('Saved.').waitFor();
    await push(page, 'Control+y', 5);
    await drawn.waitFor();

    await page.reload();
    await drawn.waitFor();
    await page.getByText('What was unsaved at the last visit is on the desk.').waitFor();
  });

  it('keeps what was drawn where somebody else saved first, and shows theirs', async () => {
    const { id } = await startedWork('S-33', { zones: [sky()] });
    const page = await pages.atDesk(`/works/${id}`);
    await page.getByRole('button', { name: /Sky/ }).first().click();
    await page.getByLabel('Name').fill('Evening sky');
    await savedWork(id, { zones: [sky(160), post] });
    await page.getByRole('button', { name: 'Save the drawing' }).click();

    const alert = page.getByRole('alert');
    await alert.getByRole('heading', { name: 'Somebody saved this work meanwhile' }).waitFor();
    await alert.getByText('Evening sky: the outline and the name differ.').waitFor();
    await alert.getByText('Post is only there.').waitFor();
    expect(await page.getByLabel('Name').inputValue()).toBe('Evening sky');
    await alert.getByRole('button', { name: /^Show the other drawing/ }).click();
    expect(await page.locator('.zone-other').count()).toBe(2);
    await expectSoundScreen(page, 'a drawing that was saved second');

    await alert.getByRole('button', { name: /^Let theirs stand/ }).click();
    await page.getByRole('button', { name: /Post/ }).waitFor();
    await page.getByRole('button', { name: 'Take back' }).click();
    await page
      .getByRole('button', { name: /Evening sky/ })
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Save the drawing' }).click();
    await page.getByText('Saved.').waitFor();
    expect((await keptWork(id)).zones).toMatchObject([{ name: 'Evening sky' }]);

    await page.getByLabel('Name').fill('Morning sky');
    await savedWork(id, { zones: [post] });
    await page.getByRole('button', { name: 'Save the drawing' }).click();
    await page.getByRole('button', { name: 'Let mine stand' }).click();
    await page.getByText('Saved.').waitFor();
    expect((await keptWork(id)).zones).toMatchObject([{ name: 'Morning sky' }]);
  });

  it('is drawn with a finger on a phone', async () => {
    const { id } = await startedWork('S-34');
    const page = await pages.onPhone(`/works/${id}`);
    await page.getByRole('button', { name: 'Draw the first zone' }).tap();
    await page.getByRole('application').scrollIntoViewIfNeeded();
    for (const place of [
      [80, 100],
      [320, 100],
      [320, 300],
    ] as const)
      await page.touchscreen.tap(...(await onBoard(page, place)));
    await page.getByRole('button', { name: 'Close it' }).tap();
    await page
      .getByRole('button', { name: /Zone A/ })
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Save the drawing' }).tap();
    await page.getByText('Saved.').waitFor();
    const [zone] = (await keptWork(id)).zones;
    for (const [index, place] of [
      [80, 100],
      [320, 100],
      [320, 300],
    ].entries())
      expect(apart(zone!.polygonMm[index]!, place), `point ${index + 1}`).toBeLessThan(2);
  });

  it('says what crosses itself, and is refused in the same words', async () => {
    const crossed = {
      ...sky(),
      polygonMm: [
        [40, 40],
        [360, 40],
        [40, 180],
        [360, 180],
      ],
    };
    const { id } = await startedWork('S-35', { zones: [sky()] });
    const page = await pages.atDesk(`/works/${id}`);
    await page.getByRole('button', { name: /Sky/ }).first().click();
    for (const [index, [across, down]] of crossed.polygonMm.entries()) {
      await page.getByRole('button', { name: index === 0 ? 'The first' : 'The next' }).click();
      await page.getByRole('textbox', { name: 'Across' }).fill(String(across));
      await page.getByRole('textbox', { name: 'Down' }).fill(String(down));
    }
    await page.getByRole('heading', { name: 'One outline cannot be saved so' }).waitFor();
    await page.getByText('The outline of Sky crosses itself').waitFor();
    await page.getByRole('button', { name: 'Save the drawing' }).click();
    await page.getByText('The outline of zone sky crosses itself.').waitFor();
    expect((await keptWork(id)).zones[0]!.polygonMm).toEqual(sky().polygonMm);
  });

  it('gives its zones out and takes others in, counted from the work rectangle', async () => {
    const rectangle = { offsetMm: [20, 30], sizeMm: [360, 440] };
    const { id } = await startedWork('S-37', { zones: [sky()], rectangle });
    const page = await pages.atDesk(`/works/${id}`);
    await page.getByText('Zones as a file').click();
    const link = page.getByRole('link', { name: 'Give the saved zones out' });
    const given = await page.request.get(new URL((await link.getAttribute('href'))!, page.url()).href);
    const [zone] = (await given.json()) as [{ polygonMm: number[][] }];
    expect(zone.polygonMm[0]).toEqual([20, 10]);

    const file = (zones: unknown) => ({
      name: 'zones.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(zones)),
    });
    const take = page.getByLabel('Add: Take zones in');
    await take.setInputFiles(file({ zones: [] }));
    await page.getByText('This file holds no list.').waitFor();
    await take.setInputFiles(
      file([{ ...post, polygonMm: post.polygonMm.map(([x, y]) => [x! - 20, y! - 30]) }]),
    );
    await page.getByRole('button', { name: /Post/ }).waitFor();
    await page.getByText('Saved.').waitFor();
    expect((await keptWork(id)).zones).toMatchObject([post]);
    await page.getByRole('link', { name: 'Its facts' }).click();
    await page.getByRole('link', { name: 'Drawing' }).click();
    await page.getByRole('button', { name: /Post/ }).waitFor();
  });

  it('has sound screens, empty and full', async () => {
    const { id } = await startedWork('S-36', { zones: [sky(), post] });
    await plannedEtch(id);
    const page = await pages.atDesk('/works');
    await page.getByRole('list', { name: 'Works' }).waitFor();
    await expectSoundScreen(page, 'the list of works');
    await page.goto(new URL('/works/new', page.url()).href);
    await page.getByText('It is already on its way').click();
    await expectSoundScreen(page, 'a work entered halfway');
    await page.goto(new URL(`/works/${id}`, page.url()).href);
    await page.getByRole('button', { name: /Sky/ }).first().click();
    await page.getByRole('button', { name: 'The first' }).click();
    await expectSoundScreen(page, 'a zone in hand');
    await page.goto(new URL(`/works/${id}/etch`, page.url()).href);
    await page.getByRole('heading', { name: 'In time' }).waitFor();
    await page.getByText('Plan anew, with other choices').click();
    await expectSoundScreen(page, 'a planned etch');
    await page.goto(new URL(`/works/${id}/second-etch`, page.url()).href);
    await page.getByLabel('Sky').selectOption('its lights are lost');
    await page.getByRole('button', { name: 'Plan the second etch' }).click();
    await page.getByText('lights are lost: gum only, so that no more goes').waitFor();
    // planned, it leads on; changed, it is planned anew first
    await page.locator('.work-act').getByText('Go to the bench').waitFor();
    await expectSoundScreen(page, 'a second etch');
    for (const view of ['photographs', 'about']) {
      await page.goto(new URL(`/works/${id}/${view}`, page.url()).href);
      await page.getByRole('application').waitFor();
      await expectSoundScreen(page, view);
    }
  });
});

async function push(page: Page, key: string, times: number): Promise<void> {
  for (let pressed = 0; pressed < times; pressed++) await page.keyboard.press(key);
}

/** Where a place on the stone (mm) is on the page, from how the stone's face is drawn; all stones here are 400 × 500. */
async function onBoard(page: Page, [x, y]: readonly [number, number]): Promise<[number, number]> {
  const face = (await page.locator('.stone-face .face').boundingBox())!;
  return [face.x + (x / 400) * face.width, face.y + (y / 500) * face.height];
}

function apart(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);
}
