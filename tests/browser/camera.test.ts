import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { TestStone } from '../../src/records/testStone.ts';
import { describeInBrowser, phone } from './pages.ts';
import { enteredStone, keptStone } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';

/** What the false camera shows: a photograph, over and over. */
const film = join(mkdtempSync(join(tmpdir(), 'stonetone-camera-')), 'view.mjpeg');
// Of even width and height: others the false camera can't show.
const frame = readFileSync(
  new URL('../../src/sample/saltreach/kept/year/mooring/stone.jpg', import.meta.url),
);
writeFileSync(film, Buffer.concat([frame, frame]));

/** Another photograph, chosen as a file. */
const other = fileURLToPath(new URL('../../src/sample/saltreach/kept/pulls/pull-3.jpg', import.meta.url));

const open = 'Photograph it with the guide';

/** Lays the phone so; it must be told once before the page is opened. */
type Lay = (beta: number, gamma: number) => Promise<void>;

async function laying(page: Page): Promise<Lay> {
  const told = await page.context().newCDPSession(page);
  const lay: Lay = async (beta, gamma) => {
    await told.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta, gamma });
  };
  await lay(0, 0);
  await page.reload();
  return lay;
}

async function enteredTestStone(name: string): Promise<string> {
  const answer = await fetch(`${inject('address')}/api/test-stones`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({
      name,
      sizeMm: [400, 300],
      factors: [{ name: 'etch' }],
      patches: [
        {
          id: 'A1',
          square: 'A1',
          polygonMm: [
            [10, 10],
            [60, 10],
            [60, 60],
            [10, 60],
          ],
          treatment: { etch: 'gum' },
        },
      ],
    }),
  });
  if (!answer.ok) throw new Error(await answer.text());
  return ((await answer.json()) as TestStone).id;
}

async function keptTestStone(id: string): Promise<TestStone> {
  return (await (await fetch(`${inject('address')}/api/test-stones/${id}`)).json()) as TestStone;
}

async function picture(page: Page, name: string): Promise<void> {
  if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/${name}.png` });
}

describeInBrowser(
  'the camera in the page',
  (pages) => {
    it('tells what to mend, takes a photograph, says what it found, and keeps it', async () => {
      const { id } = await enteredStone('S-201', { widthMm: 400, heightMm: 300 });
      const page = await pages.onPhone(`/stones/${id}`);
      const lay = await laying(page);
      await page.getByRole('button', { name: open }).click();
      const dialog = page.getByRole('dialog', { name: 'Photograph S-201' });
      await dialog.getByText('The stone fills the frame: 400 × 300 mm.').waitFor();
      await lay(8, 0);
      await dialog.getByText('Hold it more level: lower the upper edge.').waitFor();
      await dialog.getByText('8° off square.', { exact: false }).waitFor();
      await expectSoundScreen(page, 'the camera, tilted');
      await page.setViewportSize(phone);
      await picture(page, 'camera-tilted');
      await dialog.getByRole('button', { name: 'It stands upright' }).click();
      await dialog.getByText('Tip the camera up a little.').waitFor();
      await dialog.getByRole('button', { name: 'It lies flat' }).click();
      await lay(1, 0);
      await dialog.getByText('Steady, level, even: take it.').waitFor();
      await picture(page, 'camera-level');

      await dialog.getByRole('button', { name: 'After 2 s' }).click();
      await dialog.getByRole('button', { name: 'Take it', exact: true }).click();
      await dialog.locator('.camera-countdown').waitFor();
      await dialog.getByText('The camera was 1° ± 1° off square.').waitFor();
      await dialog.getByText('It is sharp.').waitFor();
      await expectSoundScreen(page, 'a photograph before it is kept');
      await page.setViewportSize(phone);
      await picture(page, 'camera-review');
      await dialog.getByRole('button', { name: 'Take it again' }).click();
      await dialog.getByText('Steady, level, even: take it.').waitFor();
      await page.keyboard.press('Space');
      await dialog.getByRole('button', { name: /^Keep it/ }).click();
      await expect.poll(async () => (await keptStone(id)).photographs.length).toBe(1);
      expect(await page.getByRole('dialog').count()).toBe(0);
    });

    it('asks for the second, set-up-again photograph where two tell σ', async () => {
      const id = await enteredTestStone('T-201');
      const page = await pages.atDesk(`/test-stones/${id}/photographs`);
      await page.getByRole('button', { name: open }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByText('Steady and even: take it.').waitFor();
      await picture(page, 'camera-desk');
      await dialog.getByRole('button', { name: 'Take it', exact: true }).click();
      await dialog.getByRole('button', { name: /^Keep it/ }).click();
      await dialog.getByText('the difference tells how far one reading strays').waitFor();
      await expectSoundScreen(page, 'between two photographs');
      await picture(page, 'camera-between');
      await dialog.getByRole('button', { name: 'Take the second photograph' }).click();
      await dialog.getByLabel('Choose a photograph instead').setInputFiles(other);
      await dialog.getByRole('button', { name: /^Keep it/ }).click();
      await expect.poll(async () => (await keptTestStone(id)).drawn?.repeat ?? null).not.toBeNull();
      const { drawn } = await keptTestStone(id);
      expect(drawn?.repeat).not.toBe(drawn?.photograph);
      await page.getByRole('button', { name: 'Leave them' }).click();
      await page.getByText('Its second photograph is kept too').waitFor();
    });

    it('without a camera says why, and takes a photograph as a file', async () => {
      const { id } = await enteredStone('S-202', { widthMm: 400, heightMm: 300 });
      const page = await pages.onPhone(`/stones/${id}`);
      const refusing = (name: string) =>
        page.evaluate((error) => {
          navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', error));
        }, name);
      await refusing('NotAllowedError');
      await page.getByRole('button', { name: open }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByText('The camera was refused to this page.').waitFor();
      await expectSoundScreen(page, 'the camera, refused');
      await page.setViewportSize(phone);
      await picture(page, 'camera-refused');
      await refusing('NotFoundError');
      await dialog.getByRole('button', { name: 'Try the camera again' }).click();
      await dialog.getByText('No camera was found here.').waitFor();
      await page.evaluate(() => {
        // what was put over the browser's own is taken off again
        delete (navigator.mediaDevices as { getUserMedia?: unknown }).getUserMedia;
      });
      await dialog.getByRole('button', { name: 'Try the camera again' }).click();
      await dialog.getByRole('button', { name: 'Take it', exact: true }).waitFor();
      await dialog.locator('video').evaluate((video) => {
        const stream = (video as HTMLVideoElement).srcObject as MediaStream;
        stream.getVideoTracks()[0]?.dispatchEvent(new Event('ended'));
      });
      await dialog.getByText('The camera went away.').waitFor();
      await dialog.getByRole('button', { name: 'Leave' }).click();

      await page.evaluate(() => Object.defineProperty(window, 'isSecureContext', { value: false }));
      await page.getByRole('button', { name: open }).click();
      await dialog.getByText('No live view on a plain http address.').waitFor();
      const own = dialog.getByLabel('Take it with the device’s camera');
      expect(await own.getAttribute('capture')).toBe('environment');
      await expectSoundScreen(page, 'without a live view');
      await page.setViewportSize(phone);
      await picture(page, 'camera-file');
      await own.setInputFiles(other);
      await dialog.getByText('Its tilt is not known.').waitFor();
      await picture(page, 'camera-file-review');
      await dialog.getByRole('button', { name: /^Keep it/ }).click();
      await expect.poll(async () => (await keptStone(id)).photographs.length).toBe(1);
    });
  },
  {
    args: [
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
    permissions: ['camera', 'accelerometer', 'gyroscope', 'magnetometer'],
  },
);
