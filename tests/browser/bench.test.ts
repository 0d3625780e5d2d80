import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import { goTo, loggedEvents, touchFirst } from './benchHands.ts';
import { describeInBrowser, phone } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { plannedEtch, post, sentTo, sky, startedWork } from './works.ts';

describeInBrowser('the bench', (pages) => {
  it('says at the lift that a second etch lay too short, by the rule of its plan, light before ground', async () => {
    const work = await startedWork('S-907', { zones: [sky(), post], stage: 'rolled-up' });
    await plannedEtch(work.id);
    await sentTo(`/api/works/${work.id}/second-etch`, {
      line: 'full',
      readings: [
        { zone: 'sky', reading: 'as drawn' },
        { zone: 'post', reading: 'as drawn' },
      ],
    });
    const { id } = await sentTo<{ id: string }>('/api/runs', { workId: work.id });
    await sentTo(`/api/runs/${id}/events`, {
      clientId: 'begun',
      kind: 'stage-started',
      at: new Date().toISOString(),
      payload: { stage: 'second-etch' },
    });
    const page = await pages.onPhone(`/bench/${id}`);
    await page.clock.install();
    await page.reload();
    for (const place of ['ground', 'sky', 'post']) {
      await page.getByRole('heading', { name: new RegExp(`^Lay ${place}`) }).waitFor();
      await touchFirst(page, 'laid');
    }
    await page.getByRole('heading', { name: 'Next: lift sky' }).waitFor();
    await touchFirst(page, 'A lifted');
    await page
      .getByRole('alert')
      .filter({ hasText: /^Too soon: Sky lay 0:0\d, 1:30 at least/ })
      .waitFor();
    await expectSoundScreen(page, 'a bench where a lift came too soon');
  });

  it('leads through a first etch by the clock, by keys and pedal, over a reload', async () => {
    const { page, plan } = await begunRun('S-91', pages.atDesk);
    await page.getByRole('heading', { name: /^Begin: lay / }).waitFor();
    await page.getByText('Rosin and talc come first, dusted off: they are not in this log.').waitFor();
    await page.getByRole('button', { name: 'Begin: rosin, then talc' }).waitFor();
    await expectSoundScreen(page, 'a bench before its beginning');
    await page.keyboard.press('Space');
    await page.getByRole('timer').waitFor();
    const begun = Date.parse((await loggedEvents(page, 1))[0]!.at);
    const touches = plan.plan.schedule.steps.filter(({ action }) => action !== 'move');
    for (const [index, { from, to, action, zone }] of touches.entries()) {
      const { letter } = plan.plan.zones.find(({ id }) => id === zone)!;
      const done = action === 'lay' ? 'laid' : 'lifted';
      if (index === 1) {
        await goTo(page, begun, (from + to) / 2);
        const first = (Date.parse((await loggedEvents(page, 2))[1]!.at) - begun) / 1000;
        const late = Math.max(0, first - touches[0]!.to);
        await expectLeft(page, begun, to + late);
        await page.reload();
        await expectLeft(page, begun, to + late);
      }
      await goTo(page, begun, to - 1);
      await page.locator('.bench-target.first', { hasText: `${letter} ${done}` }).waitFor();
      await page.keyboard.press(index % 2 ? 'PageDown' : 'Space');
      await loggedEvents(page, index + 2);
      await page.clock.fastForward(600);
      if (index === 2) await expectSoundScreen(page, 'a bench while the etch lies');
    }
    for (const round of [1, 2, 3]) {
      await page.locator('.bench-target.first', { hasText: `Round ${round} buffed` }).waitFor();
      await page.keyboard.press('ArrowRight');
      await page.clock.fastForward(20_000);
    }
    await page.getByText('Until: the cloth stops dragging').waitFor();
    await page.locator('.bench-target.first', { hasText: 'The etch is done' }).click();
    await page.getByRole('heading', { name: 'Rest under gum' }).waitFor();
    await page.getByRole('table').getByRole('rowheader', { name: /Sky/ }).waitFor();
    await expectSoundScreen(page, 'a bench after the etch');
    const events = await loggedEvents(page, touches.length + 6);
    await page.getByRole('link', { name: 'Leave the bench' }).click();
    await page.getByRole('link', { name: 'First etch', exact: true }).click();
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await page.getByRole('heading', { name: 'Rest under gum' }).waitFor();
    expect(events.map(({ kind }) => kind)).toEqual([
      'stage-started',
      ...touches.map(({ action }) => (action === 'lay' ? 'laid' : 'lifted')),
      'buffed',
      'buffed',
      'buffed',
      'stage-ended',
      'stage-started',
    ]);
    for (const [index, { to }] of touches.entries()) {
      const late = (Date.parse(events[index + 1]!.at) - begun) / 1000 - to;
      expect(Math.abs(late), `touch ${index}: seconds beside the plan`).toBeLessThan(15);
    }
  });

  it('goes on while the server is out of reach, sends later in order, and takes back what was held', async () => {
    const { page, plan } = await begunRun('S-92', pages.onPhone);
    await page.getByRole('button', { name: 'Voice on' }).click();
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    const begun = Date.parse((await loggedEvents(page, 1))[0]!.at);
    await page.context().setOffline(true);
    const lays = plan.plan.schedule.steps.filter(({ action }) => action === 'lay');
    for (const [index, { to }] of lays.slice(0, 2).entries()) {
      await goTo(page, begun, to - 1);
      await page.locator('.bench-target.first', { hasText: /laid$/ }).click();
      await page.clock.fastForward(700);
      if (index === 0) await page.getByText('1 not sent yet').waitFor();
    }
    await page.getByRole('button', { name: 'Trouble' }).click();
    await page.getByText('3 not sent yet. Kept here, sent in order later: go on.').waitFor();
    expect(await loggedEvents(page, 1)).toHaveLength(1);
    await expectTouchable(page);
    await page.context().setOffline(false);
    await page.clock.fastForward(2500);
    const events = await loggedEvents(page, 4);
    expect(events.map(({ kind }) => kind)).toEqual(['stage-started', 'laid', 'laid', 'trouble']);
    expect(new Set(events.map(({ clientId }) => clientId)).size).toBe(4);
    expect(events.map(({ at }) => at)).toEqual(events.map(({ at }) => at).toSorted());
    await page.getByText('All is sent and kept.').waitFor({ state: 'attached' });

    const undo = page.getByRole('button', { name: /^Hold: take back/ });
    await undo.dispatchEvent('pointerdown');
    await undo.dispatchEvent('pointerup');
    await undo.dispatchEvent('pointerdown');
    await page.clock.fastForward(1000);
    await undo.dispatchEvent('pointerup');
    const taken = (await loggedEvents(page, 5))[4]!;
    expect(taken).toMatchObject({ kind: 'undo', payload: { clientId: events[3]!.clientId } });
    await page.reload();
    await page.getByRole('button', { name: 'Voice off' }).waitFor();
    expect(await loggedEvents(page, 5)).toHaveLength(5);

    await page.getByRole('button', { name: 'Trouble' }).click();
    await page.getByRole('button', { name: 'Say what the trouble was' }).click();
    await page.getByRole('button', { name: 'gum streaked' }).click();
    await page.getByLabel('In your own words, if you like').fill('by the reeds');
    await expectSoundScreen(page, 'what a trouble was');
    await page.getByRole('button', { name: 'Keep: gum streaked: by the reeds' }).click();
    await loggedEvents(page, 7);
    await page.getByRole('button', { name: 'Another stage' }).click();
    await page.locator('.bench-logged').getByText('the trouble was: gum streaked: by the reeds').waitFor();
  });

  it('is the same on two screens', async () => {
    const { page } = await begunRun('S-93', pages.atDesk);
    const other = await pages.onPhone(new URL(page.url()).pathname);
    await other.getByRole('button', { name: 'Begin', exact: true }).waitFor();
    await page.keyboard.press('Space');
    await other.getByRole('timer').waitFor({ timeout: 3000 });
    const [here, there] = await Promise.all([secondsShown(page), secondsShown(other)]);
    expect(Math.abs(here - there)).toBeLessThanOrEqual(1);
    const first = other.locator('.bench-target.first');
    const laid = (await first.textContent())!;
    await first.click();
    await page.getByRole('button', { name: laid, exact: true }).waitFor({ state: 'detached', timeout: 3000 });
    expect(new Set((await loggedEvents(page, 2)).map(({ device }) => device)).size).toBe(2);
  });

  it('a stone that was etched goes on with its line, and is etched again only when that is asked', async () => {
    const { id } = await startedWork('S-94', { zones: [sky(), post], stage: 'trial-proofs' });
    await plannedEtch(id);
    const page = await pages.atDesk(`/works/${id}/etch`);
    await page.getByText(/^This stone was etched already. Next in the line: ink full and dry/).waitFor();
    expect(await page.getByRole('button', { name: 'Begin at the stone' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Etch it again' }).click();
    await page.getByText('This stone was etched already: etch it again, from this plan?').waitFor();
    await expectSoundScreen(page, 'a plan of a stone that was etched');
    await page.getByRole('button', { name: 'No, leave it' }).click();
    await page.locator('.plan-begin').getByRole('button', { name: 'Go to the bench' }).click();
    await page.getByRole('heading', { name: /^Next: ink full and dry/ }).waitFor();
  });

  it('asks before a drawing is grained away, and leads on to the stone afterwards', async () => {
    const work = await startedWork('S-908', { zones: [post], stage: 'closed-down' });
    const { id } = await sentTo<{ id: string }>('/api/runs', { workId: work.id });
    const page = await pages.onPhone(`/bench/${id}`);
    await page.getByRole('button', { name: 'Begin: regrain' }).click();
    await page.getByRole('heading', { name: 'Grain Low Water away?' }).waitFor();
    await expectSoundScreen(page, 'the question before a drawing is grained away');
    await page.getByRole('button', { name: 'No, leave it on the stone' }).click();
    await page.getByRole('button', { name: 'Begin: regrain' }).click();
    const yes = page.getByRole('button', { name: 'Hold: yes, grain it away' });
    await yes.click();
    await yes.dispatchEvent('pointerdown');
    await page.getByRole('heading', { name: 'Regrain', exact: true }).waitFor();
    expect((await loggedEvents(page, 1)).map(({ kind }) => kind)).toEqual(['stage-started']);
    // a knuckle is slower than a bounce
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: 'Done: regrain' }).click();
    await page.getByRole('heading', { name: 'Grained away' }).waitFor();
    await expectSoundScreen(page, 'the bench of a work that was grained away');
    await page.getByRole('link', { name: 'To the stone S-908' }).click();
    await page.getByRole('heading', { name: 'Nothing is on it' }).waitFor();
  });

  it('says so where there is no such run', async () => {
    const page = await pages.atDesk('/bench/none');
    await page.getByRole('heading', { name: /not here|no such|nothing/i }).waitFor();
  });
});

/** A planned etch, begun from its own screen, with a clock that the test moves on. */
async function begunRun(stone: string, open: (path: string) => Promise<Page>) {
  const { id } = await startedWork(stone, { zones: [sky(), post] });
  const plan: KeptPlan = await plannedEtch(id);
  const page = await open(`/works/${id}/etch`);
  await page.clock.install();
  await page.reload();
  await page.getByRole('button', { name: 'Begin at the stone' }).click();
  await page.waitForURL(/\/bench\//);
  return { page, plan };
}

/** The seconds that a screen shows now. */
async function secondsShown(page: Page): Promise<number> {
  const [, minutes, seconds] = /(\d+):(\d\d)/.exec((await page.getByRole('timer').textContent()) ?? '')!;
  return Number(minutes) * 60 + Number(seconds);
}

/** The seconds on screen are those that the plan leaves at this moment, at most two beside. */
async function expectLeft(page: Page, begun: number, to: number): Promise<void> {
  const timer = page.getByRole('timer');
  await timer.waitFor();
  const [words, now] = await timer.evaluate((element) => [element.textContent ?? '', Date.now()] as const);
  const [, minutes, seconds] = /(\d+):(\d\d)/.exec(words)!;
  const left = to - (now - begun) / 1000;
  expect(Math.abs(Number(minutes) * 60 + Number(seconds) - Math.max(0, left))).toBeLessThanOrEqual(2);
}

/** Every target takes a knuckle, and those for now stand in the first view of a phone. */
async function expectTouchable(page: Page): Promise<void> {
  for (const target of await page.locator('.bench button, .bench a').all()) {
    const { width, height } = (await target.boundingBox())!;
    const words = (await target.textContent()) ?? '';
    expect(Math.min(width, height), words).toBeGreaterThanOrEqual(64);
  }
  const first = (await page.locator('.bench-target.first').boundingBox())!;
  expect(first.y + first.height).toBeLessThanOrEqual(phone.height);
}
