import { chromium, type Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { ownAddresses } from '../../src/server/network/ownAddresses.ts';
import { aPicture, folderUnderTest, postJson } from '../server/serverUnderTest.ts';
import { chromiumPath } from './chromium.ts';
import { openServer } from './openServer.ts';
import { phone } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

const args = ['--no-sandbox', '--ignore-certificate-errors'];

/** A phone that is let in over https, a work to pull from, and a server that can be ended and started anew. */
async function aPhone() {
  const dataFolder = await folderUnderTest();
  const secure = { dataFolder, network: { certificate: 'self' } } as const;
  const first = await openServer(secure);
  const { address } = first.server;
  const read = async <T>(path: string, init?: RequestInit): Promise<T> =>
    (await (await fetch(address + path, init)).json()) as T;
  const stone = await read<StoneEntry>(
    '/api/stones',
    postJson({ name: 'S-41', widthMm: 300, heightMm: 400 }),
  );
  const work = await read<WorkEntry>(
    '/api/works',
    postJson({ title: 'Spring Tide', stoneId: stone.id, stage: 'proofs' }),
  );
  const browser = await chromium.launch({ executablePath: chromiumPath!, args });
  onTestFinished(() => browser.close());
  const context = await browser.newContext({
    viewport: phone,
    ignoreHTTPSErrors: true,
    hasTouch: true,
    isMobile: true,
    reducedMotion: 'reduce',
  });
  context.setDefaultTimeout(60_000);
  const hand = await context.newPage();
  const { code } = await read<{ code: string }>('/api/letting-in', { method: 'POST' });
  await hand.goto(`${first.network}/join#${code}`);
  await hand.getByRole('button', { name: 'Go to the stones' }).click();
  await hand.getByRole('navigation', { name: 'The pages of Stonetone' }).waitFor();
  await hand.evaluate(async () => void (await navigator.serviceWorker.ready));
  const port = Number(new URL(address).port);
  return {
    hand,
    context,
    read,
    work,
    at: `${first.network}/works/${work.id}/proofs`,
    pulls: async () => (await read<{ pulls: readonly PullEntry[] }>(`/api/works/${work.id}/pulls`)).pulls,
    stop: () => first.server.stop(),
    startAgain: () => openServer({ ...secure, port }),
  };
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const head = (page: Page, name: string | RegExp) => page.getByRole('heading', { name, level: 1 }).waitFor();
const picture = async (mark: number) => ({
  name: `pull ${mark}.png`,
  mimeType: 'image/png',
  buffer: Buffer.from(await aPicture(mark)),
});
const shot = async (page: Page, name: string) => {
  if (process.env.PICTURES)
    await page.screenshot({ path: `${process.env.PICTURES}/${name}.png`, fullPage: true });
};

/** From the head of the photograph's step to the last one. */
async function toTheEnd(page: Page, file: Awaited<ReturnType<typeof picture>>): Promise<void> {
  await page.locator('input[type=file]').first().setInputFiles(file);
  await press(page, 'Once is enough');
  await page.getByText('5 minutes').click();
  await press(page, 'Next');
  await head(page, 'Which paper?');
}

describe.skipIf(chromiumPath === null || ownAddresses().length === 0)(
  'a pull entered without the network',
  () => {
    it('is entered to its end, outlives a reload and a crash, and is kept once though an answer is lost', async () => {
      const { hand, context, work, at, pulls, stop, startAgain } = await aPhone();
      await hand.goto(at);
      await head(hand, 'No pull has been entered yet');
      await hand.waitForTimeout(500);
      await stop();
      await hand.goto(`${at}/new`);
      await hand.getByText('This is as this device heard it last', { exact: false }).waitFor();
      await press(hand, 'Next');
      await head(hand, 'Photograph pull 1');
      await toTheEnd(hand, await picture(41));
      await expectSoundScreen(hand, 'the paper of a pull without the network');
      await hand.getByLabel('What paper it is, as it is called here').fill('rag 250');
      // loaded anew in the middle of it
      await hand.reload();
      await head(hand, 'Which paper?');
      await hand.getByText('rag 250').first().waitFor();
      await shot(hand, 'pull-paper-offline');
      for (const name of [
        'Which ink and roller?',
        'How was it inked?',
        'How was the press set?',
        'Who pulled it?',
      ]) {
        await press(hand, 'Next');
        await head(hand, name);
      }
      await press(hand, 'Next');
      await hand.getByLabel('Remarks').fill('grey in the sky');
      await press(hand, 'Keep pull 1');
      await head(hand, 'Pull 1 is kept here, not sent yet');
      await hand.getByText('Its photograph is not sent yet.').waitFor();
      await hand.getByText('grey in the sky').waitFor();
      await expectSoundScreen(hand, 'a pull that is not sent yet');
      await shot(hand, 'pull-unsent');

      // the page is killed, and another one shows what waits
      const crashed = hand.waitForEvent('crash');
      void hand.goto('chrome://crash').catch(() => {});
      await crashed;
      const next = await context.newPage();
      await next.goto(at);
      await head(next, 'No pull is sent yet, one waits here');
      const list = next.getByRole('list', { name: 'Pulls not sent yet' });
      await list.getByText('Pull 1 of Spring Tide: not sent yet').waitFor();
      await expectSoundScreen(next, 'proofs of which none is sent');
      await shot(next, 'proofs-unsent');

      // the next one begins with what this one had
      await next.goto(`${at}/new`);
      await press(next, 'Next');
      await head(next, 'Photograph pull 2');
      await press(next, 'Enter it without a reading');
      await head(next, 'Which paper?');
      await next.getByRole('button', { name: 'rag 250 used last', pressed: true }).waitFor();
      for (let step = 0; step < 5; step++) await press(next, 'Next');
      await press(next, 'Keep pull 2');
      await head(next, 'Pull 2 is kept here, not sent yet');

      // the server is back, and its answer to the first pull gets lost
      let lost = 0;
      await next.route('**/pulls', async (route) => {
        if (lost > 0 || route.request().method() !== 'POST') return route.continue();
        // it may be tried before the server is there
        const there = await route.fetch().then(
          () => true,
          () => false,
        );
        if (there) lost += 1;
        await route.abort();
      });
      await startAgain();
      await expect
        .poll(async () => (await pulls()).map(({ number }) => number), { timeout: 60_000 })
        .toEqual([1, 2]);
      await head(next, /^Pull 2,/);
      const [one] = await pulls();
      expect([lost, one!.remarks, one!.paper.words, one!.photographs.length, one!.workId]).toEqual([
        1,
        'grey in the sky',
        'rag 250',
        1,
        work.id,
      ]);
      const left = () =>
        next.evaluate(
          () =>
            new Promise<number[]>((resolve) => {
              const opening = indexedDB.open('stonetone-held');
              opening.onsuccess = () => {
                const stores = ['pulls', 'photographs'];
                const reading = opening.result.transaction(stores);
                const counts = stores.map((name) => reading.objectStore(name).count());
                reading.oncomplete = () => {
                  opening.result.close();
                  resolve(counts.map(({ result }) => result));
                };
              };
            }),
        );
      await expect.poll(left).toEqual([0, 0]);
    }, 280_000);

    it('waits where its number was taken meanwhile or its work is gone, and says so', async () => {
      const { hand, context, read, work, at, pulls } = await aPhone();
      await read(`/api/works/${work.id}/pulls`, postJson({ number: 1, paper: { words: 'rag 250' } }));
      await hand.goto(at);
      await head(hand, /./);
      await hand.getByRole('link', { name: 'Enter a pull' }).click();
      await head(hand, 'Which pull is it?');
      await context.setOffline(true);
      await press(hand, 'Next');
      await head(hand, 'Photograph pull 2');
      await toTheEnd(hand, await picture(43));
      for (let step = 0; step < 5; step++) await press(hand, 'Next');
      await press(hand, 'Keep pull 2');
      await head(hand, 'Pull 2 is kept here, not sent yet');
      await hand.getByRole('link', { name: 'Proofs', exact: true }).click();
      const laid = hand.getByRole('list', { name: 'The pulls, each as on the stone' });
      await laid.getByText('not sent yet').first().waitFor();
      await expectSoundScreen(hand, 'pulls side by side, one not sent');
      await shot(hand, 'laid-unsent');
      await laid.getByRole('link').last().click();

      // somebody else enters a pull 2, and puts the work away
      await read(`/api/works/${work.id}/pulls`, postJson({ number: 2, paper: { words: 'newsprint' } }));
      const { version } = await read<WorkEntry>(`/api/works/${work.id}`);
      const putBy = (put: boolean, from: number) =>
        read(`/api/works/${work.id}/put-by`, {
          ...postJson({ version: from, putBy: put }),
          method: 'PUT',
        });
      await putBy(true, version);
      await context.setOffline(false);
      await hand.getByText('Stonetone answered and does not take it.').waitFor();
      await hand.getByText('The work Spring Tide', { exact: false }).waitFor();
      await expectSoundScreen(hand, 'a pull that is not taken');
      await shot(hand, 'pull-refused');
      await putBy(false, version + 1);
      await press(hand, 'Send it again');
      await hand.getByText('There is a pull 2 of this work already.', { exact: false }).waitFor();
      await press(hand, 'Enter it as pull 3');
      await expect.poll(async () => (await pulls()).map(({ number }) => number)).toEqual([1, 2, 3]);
      expect((await pulls())[2]!.photographs).toHaveLength(1);
      // the line is cut only once the page has heard of it too
      await hand.getByRole('heading', { name: /is kept here/ }).waitFor({ state: 'detached' });

      // nor before the device has let go of it: a page that ends first finds it there and asks once more
      await hand.goto(at);
      await hand.getByRole('link', { name: 'Enter a pull' }).waitFor();
      await expect.poll(() => hand.getByText('not sent yet').count()).toBe(0);

      // one more is taken back and changed, and at last thrown away: nothing of it is sent
      await hand.goto(`${at}/new`);
      await context.setOffline(true);
      const enterFour = async () => {
        await head(hand, 'Which pull is it?');
        await press(hand, 'Next');
        await head(hand, 'Photograph pull 4');
        await press(hand, 'Enter it without a reading');
        await head(hand, 'Which paper?');
        for (let step = 0; step < 5; step++) await press(hand, 'Next');
      };
      await enterFour();
      await press(hand, 'Keep pull 4');
      await head(hand, 'Pull 4 is kept here, not sent yet');
      await press(hand, 'Take it back and change it');
      await enterFour();
      await hand.getByLabel('Remarks').fill('changed');
      await press(hand, 'Keep pull 4');
      await hand.getByText('changed').waitFor();
      await press(hand, 'Throw it away');
      await press(hand, 'Keep it');
      await press(hand, 'Throw it away');
      await press(hand, 'Throw pull 4 away for good');
      await hand.getByText('not sent yet').first().waitFor({ state: 'detached' });
      await context.setOffline(false);
      await hand.goto(at);
      await hand.getByRole('link', { name: 'Enter a pull' }).waitFor();
      expect(await hand.getByText('not sent yet').count()).toBe(0);
      expect((await pulls()).map(({ number }) => number)).toEqual([1, 2, 3]);
    }, 280_000);
  },
);
