import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { type RunningServer, startServer } from '../../src/server/startServer.ts';
import { goTo, loggedEvents, touchFirst } from './benchHands.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { post, sky } from './works.ts';

const minute = 60_000;
const hour = 60 * minute;

describeInBrowser('a whole day at the bench', (pages) => {
  it('goes from the first etch to the roll-up, over a restart, a reload and what was forgotten', async () => {
    const shed = await ownShed();
    const stone = await shed.send<StoneEntry>('POST', '/api/stones', {
      name: 'S-01',
      widthMm: 400,
      heightMm: 500,
    });
    const work = await shed.send<WorkEntry>('POST', '/api/works', {
      title: 'Low Water',
      stoneId: stone.id,
      stage: 'drawn',
      zones: [sky(), post],
    });
    const plan = await shed.send<KeptPlan>('POST', `/api/works/${work.id}/plans`, {});
    await shed.send('POST', '/api/kit', { tool: 'roller', name: 'Heron', nap: 'leather' });
    const stageOfWork = async () => (await shed.send<WorkEntry>('GET', `/api/works/${work.id}`)).stage;

    const page = await pages.atDesk('/works');
    await page.addInitScript(() => {
      const said: string[] = [];
      Object.assign(globalThis, { said });
      speechSynthesis.speak = (spoken) => void said.push(spoken.text);
    });
    await page.clock.install();
    await page.goto(`${shed.address()}/works/${work.id}`);
    await page.getByRole('button', { name: 'Go to the bench' }).click();

    // the first etch, by keys
    await page.getByRole('heading', { name: /^Begin: lay / }).waitFor();
    await page.keyboard.press('Space');
    const begun = Date.parse((await loggedEvents(page, 1))[0]!.at);
    const touches = plan.plan.schedule.steps.filter(({ action }) => action !== 'move');
    for (const [index, { to, action }] of touches.entries()) {
      await goTo(page, begun, to - 1);
      const done = action === 'lay' ? 'laid' : 'lifted';
      await page.locator('.bench-target.first', { hasText: done }).waitFor();
      await page.keyboard.press('Space');
      await loggedEvents(page, index + 2);
      await page.clock.fastForward(600);
    }
    for (const round of [1, 2, 3]) {
      await touchFirst(page, `Round ${round} buffed`);
      await page.clock.fastForward(20_000);
    }
    await touchFirst(page, 'The etch is done');
    let logged = touches.length + 6;
    await loggedEvents(page, logged);
    expect(await stageOfWork()).toBe('first-etch');

    // it rests overnight, without a tap; the page is loaded again
    await page.getByRole('heading', { name: 'Rest under gum' }).waitFor();
    await page.getByText(/^Too soon: it may go on from/).waitFor();
    await touchFirst(page, 'Begin: washout');
    await page.getByRole('button', { name: /^Too soon: touch again/ }).waitFor();
    await expectSoundScreen(page, 'a rest that is not over');
    expect(await loggedEvents(page, logged)).toHaveLength(logged);
    await page.clock.fastForward(14 * hour);
    await page.reload();
    await expectTimer(page, /^14 h 0\d/);

    // the server is down when the washout begins; what was tapped waits and is sent
    await shed.stop();
    await touchFirst(page, 'Begin: washout');
    await page.getByText('1 not sent yet. Kept here, sent in order later: go on.').waitFor();
    await page.clock.fastForward(60_500);
    await page.getByRole('heading', { name: 'Washout' }).waitFor();
    await expectSaid(page, 'Washout, one minute. Look: only a ghost of the drawing is left?');
    await shed.start();
    await page.clock.fastForward(2500);
    logged += 1;
    await loggedEvents(page, logged);
    await expectSoundScreen(page, 'a bench in the washout');
    await page.clock.fastForward(30_000);
    await touchFirst(page, 'Done: washout');
    logged += 1;
    await loggedEvents(page, logged);
    expect(await stageOfWork()).toBe('washed-out');

    // the base was rubbed in without a tap
    await page.getByRole('heading', { name: 'Next: base' }).waitFor();
    await page.getByRole('button', { name: 'I forgot' }).click();
    await page.getByRole('button', { name: '1:00', exact: true }).click();
    await expectSoundScreen(page, 'what was forgotten');
    await page.getByRole('button', { name: 'base: about 1:00' }).click();
    logged += 1;
    await loggedEvents(page, logged);

    await touchFirst(page, 'Begin: air the base');
    await page.clock.fastForward(5 * minute);
    await touchFirst(page, 'Done: air the base');
    await page.getByRole('heading', { name: 'Rest under base and gum' }).waitFor();
    await page.clock.fastForward(20 * hour);
    await touchFirst(page, 'Begin: take off the gum');
    await page.clock.fastForward(2 * minute);
    await touchFirst(page, 'Done: take off the gum');
    await touchFirst(page, 'Begin: roll up');
    await page.getByRole('button', { name: 'What is in hand' }).click();
    await page.getByRole('button', { name: /^Heron/ }).click();
    await page.getByText('in use').waitFor();
    await expectSoundScreen(page, 'tools to pick from');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.clock.fastForward(12 * minute);
    await touchFirst(page, 'Done: roll up');
    logged += 8;
    await loggedEvents(page, logged);
    expect(await stageOfWork()).toBe('rolled-up');

    await page.getByRole('button', { name: 'Another stage' }).click();
    const told = page.getByRole('table', { name: 'So far in this run' });
    await told.getByText('about 1:00 (0:30 to 1:30): remembered, not measured').waitFor();
    await expectSoundScreen(page, 'the line of a run');
    // by the bench's own clock: only the browser's was turned, so that the server rightly calls it wrong
    const rows = await told.locator('tbody tr').allTextContents();
    for (const [index, words] of [
      /^first etch/,
      /^rest under gum.*14 h 0\d/,
      /^washout.*1:3\d/,
      /^base.*remembered, not measured/,
      /^air the base.*5:0\d/,
      /^rest under base and gum.*20 h 0\d/,
      /^take off the gum.*2:0\d/,
      /^roll up.*12:\d\d/,
    ].entries()) {
      expect(rows[index]).toMatch(words);
    }
    const events = await loggedEvents(page, logged);
    expect(new Set(events.map(({ clientId }) => clientId)).size).toBe(events.length);
    expect(events.map(({ at }) => at)).toEqual(events.map(({ at }) => at).toSorted());
    expect(events.find(({ kind }) => kind === 'picked')?.payload).toMatchObject({
      tool: 'roller',
      words: expect.stringMatching(/^Heron, leather/),
    });
    await page.goto(`${shed.address()}/works`);
    await page.getByText('rolled up').filter({ visible: true }).first().waitFor();
  });
});

/** A studio of its own, that can be shut and opened again at the same address. */
async function ownShed() {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-day-'));
  let running: RunningServer | null = null;
  let port = 0;
  const start = async () => {
    const started = await startServer({
      dataFolder: join(folder, 'data'),
      port,
      screens: inject('screens'),
    });
    if (!started.ok) throw new Error(started.error.message);
    running = started.value;
    port = Number(new URL(running.address).port);
  };
  const stop = async () => {
    await running?.stop();
    running = null;
  };
  const address = () => `http://127.0.0.1:${port}`;
  onTestFinished(async () => {
    await stop();
    await rm(folder, { recursive: true, force: true });
  });
  await start();
  return {
    start,
    stop,
    address,
    async send<T>(method: string, path: string, body?: object): Promise<T> {
      const response = await fetch(address() + path, {
        method,
        ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
      });
      if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
      return (await response.json()) as T;
    },
  };
}

async function expectTimer(page: Page, words: RegExp): Promise<void> {
  const timer = page.getByRole('timer');
  await timer.waitFor();
  expect((await timer.textContent())!.trim()).toMatch(words);
}

/** What the voice said. */
async function expectSaid(page: Page, words: string): Promise<void> {
  await expect
    .poll(() => page.evaluate(() => (globalThis as unknown as { said: string[] }).said), { timeout: 5000 })
    .toContain(words);
}
