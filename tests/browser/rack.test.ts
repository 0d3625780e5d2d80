import { expect, inject, it, onTestFinished } from 'vitest';
import type { Rack } from '../../src/records/rack.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { startedWork } from './works.ts';

const hour = 3_600_000;

describeInBrowser('the rack', (pages) => {
  it('puts the stone that asks for gum first, whatever else waits, as soon as it is logged', async () => {
    const work = await startedWork('S-71', { stage: 'rolled-up', title: 'Ebb' });
    await startedWork('S-72', { stage: 'first-etch', title: 'Slack' });
    const page = await pages.atDesk('/');
    const line = page.getByRole('listitem').filter({ hasText: 'S-71' });
    await line.getByText('gummed or not: not known', { exact: true }).waitFor();
    await expectSoundScreen(page, 'a rack with unknown states');
    const { id, log } = await begunRun(work.id);
    await log('stage-started', { stage: 'proofs' });
    await line.getByText('gum now', { exact: true }).waitFor();
    await page.getByRole('heading', { level: 1, name: /^Gum S-71/ }).waitFor();
    expect(await page.getByRole('listitem').first().textContent()).toContain('S-71');
    expect(await page.getByRole('link', { name: 'Go to the bench of S-71' }).getAttribute('href')).toBe(
      `/bench/${id}`,
    );
    await line.getByText('How long it may wait').click();
    await line.getByText('gum whenever pausing over 15 min (common practice, no source)').waitFor();
    await expectSoundScreen(page, 'a rack that asks for gum');

    await page.goto(new URL(`/works/${work.id}`, page.url()).href);
    await page.getByText('Gum it now.').waitFor();
    await expectSoundScreen(page, 'a work that asks for gum');
    await page.goto(new URL(`/stones/${work.stoneId}`, page.url()).href);
    await page.getByRole('region', { name: 'How it stands' }).getByText('gum now', { exact: true }).waitFor();
    await expectSoundScreen(page, 'a stone that asks for gum');
    await log('gummed', {});
    await page.getByRole('region', { name: 'How it stands' }).getByText('gummed', { exact: true }).waitFor();
  });

  it('says what practice and this room know of a rest, and what to keep in mind', async () => {
    const work = await startedWork('S-73', { stage: 'drawn', title: 'Flood' });
    const { log } = await begunRun(work.id);
    await log('stage-started', { stage: 'first-etch' }, 200 * hour);
    await log('stage-ended', { stage: 'first-etch' }, 199 * hour);
    const page = await pages.onPhone('/');
    const line = page.getByRole('listitem').filter({ hasText: 'S-73' }).first();
    await line.getByText('How long it may wait').click();
    await line.getByText(/best from 8 h to 24 h; no longest time is known/).waitFor();
    await line.getByText(/^unknown: no print is measured yet/).waitFor();
    const reminder = page
      .getByRole('region', { name: 'To keep in mind' })
      .getByText(/away from damp and frost/);
    await reminder.first().waitFor();
    await expectSoundScreen(page, 'a rack with a reminder');
  });

  it('empty, says what to do first', async () => {
    const page = await pages.atDesk('/works');
    await page.route('**/api/rack', (route) => route.fulfill({ json: { lines: [], reminders: [] } }));
    await page.getByRole('link', { name: 'Rack', exact: true }).click();
    await page.getByRole('heading', { name: 'No work waits on any stone' }).waitFor();
    await page.getByRole('link', { name: 'Start a work' }).waitFor();
    await expectSoundScreen(page, 'an empty rack');
  });
});

describeInBrowser('leaving now', (pages) => {
  it('is ticked with a knuckle, kept while nobody answers, and says what it changed', async () => {
    const work = await startedWork('S-74', { stage: 'rolled-up', title: 'Neap' });
    const { id, log } = await begunRun(work.id);
    await log('stage-started', { stage: 'proofs' });
    const page = await pages.onPhone('/');
    await page.getByRole('link', { name: 'Leaving now' }).click();
    const stone = page.getByRole('region', { name: 'S-74, Neap' });
    const gum = stone.getByRole('checkbox', { name: 'gum it, buff it tight' });
    await gum.waitFor();
    for (const tick of await page.getByRole('checkbox').all()) {
      const { width, height } = (await tick.boundingBox())!;
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(64);
    }
    await expectSoundScreen(page, 'leaving');

    await page.route('**/api/runs/*/events', (route) => route.abort());
    await gum.click();
    expect(await gum.getAttribute('aria-checked')).toBe('true');
    await page.getByText(/^1 not sent yet/).waitFor();
    await expectSoundScreen(page, 'leaving, with ticks that are not sent');
    await page.unroute('**/api/runs/*/events');
    await expect.poll(() => keptKinds(id), { timeout: 10_000 }).toEqual(['stage-started', 'gummed']);
    await gum.click();
    await expect.poll(() => keptKinds(id)).toEqual(['stage-started', 'gummed', 'undo']);
    await gum.click();
    await page.getByRole('checkbox', { name: /^roller scraped/ }).click();
    await page.getByRole('button', { name: /^Leave, \d+ not done$/ }).click();

    const outcome = page.getByRole('listitem').filter({ hasText: 'S-74' });
    await outcome.getByText('was: proofs until steady under way, inked, not gummed').waitFor();
    await outcome.getByText(/^no longer at risk/).waitFor();
    await expectSoundScreen(page, 'left');
    await page.getByRole('link', { name: 'To the rack' }).click();
    const line = page.getByRole('listitem').filter({ hasText: 'S-74' }).first();
    await line.getByText(/^Left .*: gum it, buff it tight; roller scraped and wrapped/).waitFor();
    const { lines } = (await (await fetch(`${inject('address')}/api/rack`)).json()) as Rack;
    expect(lines.find(({ workId }) => workId === work.id)?.standing.gumNow).toBe(false);
  });

  it('keeps through a reload what no log holds, and is a touch away from the bench', async () => {
    const work = await startedWork('S-76', { stage: 'rolled-up', title: 'Drain' });
    const { id, log } = await begunRun(work.id);
    await log('stage-started', { stage: 'proofs' }, 2 * hour);
    await log('stage-ended', { stage: 'proofs' }, hour);
    const page = await pages.atDesk(`/bench/${id}`);
    // it stands inked and bare: gum is lit before what follows
    await page.getByText('This stone wants gum now: gum it, buff it tight.').waitFor();
    await expectSoundScreen(page, 'a bench whose stone wants gum');
    await page.locator('.bench-target.first', { hasText: 'Gummed' }).click();
    await page.locator('.bench-target.first', { hasText: /^Begin: / }).waitFor();
    await page.getByRole('link', { name: 'Leaving now' }).click();
    const cover = page
      .getByRole('region', { name: 'S-76, Drain' })
      .getByRole('checkbox', { name: 'cover it' });
    const roller = page.getByRole('checkbox', { name: /^roller scraped/ });
    await cover.click();
    await roller.click();
    await page.reload();
    await cover.waitFor();
    expect(await cover.getAttribute('aria-checked')).toBe('true');
    expect(await roller.getAttribute('aria-checked')).toBe('true');
    expect(await keptKinds(id)).toEqual(['stage-started', 'stage-ended', 'gummed']);
  });

  it('closed before it was sent, is sent by the rack of the same browser', async () => {
    const work = await startedWork('S-75', { stage: 'rolled-up', title: 'Spring' });
    const { id, log } = await begunRun(work.id);
    await log('stage-started', { stage: 'proofs' });
    const page = await pages.atDesk('/leaving');
    await page.route('**/api/runs/*/events', (route) => route.abort());
    const stone = page.getByRole('region', { name: 'S-75, Spring' });
    await stone.getByRole('checkbox', { name: 'gum it, buff it tight' }).click();
    await page.getByText(/^1 not sent yet/).waitFor();
    const next = await page.context().newPage();
    await page.close();
    await next.route('**/api/runs/*/events', (route) => route.abort());
    await next.goto(`${inject('address')}/`);
    await next.getByText('1 thing logged here is not sent yet.').waitFor();
    await expectSoundScreen(next, 'a rack that holds something unsent');
    await next.unroute('**/api/runs/*/events');
    await expect.poll(() => keptKinds(id), { timeout: 10_000 }).toEqual(['stage-started', 'gummed']);
    const line = next.getByRole('listitem').filter({ hasText: 'S-75' }).first();
    await line.getByText('gummed', { exact: true }).waitFor();
    await next.getByText('1 thing logged here is not sent yet.').waitFor({ state: 'detached' });
  });

  it('says so where nothing is in hand', async () => {
    const page = await pages.atDesk('/works');
    const room = ['if you inked today: roller scraped and wrapped, slab covered'];
    await page.route('**/api/rack/leaving', (route) => route.fulfill({ json: { stones: [], room } }));
    await page.goto(new URL('/leaving', page.url()).href);
    await page.getByRole('heading', { name: 'No stone is in hand' }).waitFor();
    await page.getByText('What was done and not logged is not known here.').waitFor();
    await expectSoundScreen(page, 'nothing in hand');
    await page.getByRole('checkbox', { name: /^if you inked today/ }).click();
    await page.getByRole('button', { name: 'All done: leave' }).click();
    await page.getByText('No stone’s log keeps what was ticked for the room.').waitFor();
  });
});

/** Begins a run past the screens; what is logged stays undone after the test, so that it asks for no gum any more. */
async function begunRun(workId: string) {
  const address = inject('address');
  const send = async <T>(path: string, body: object): Promise<T> => {
    const answer = await fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
    return (await answer.json()) as T;
  };
  const { id } = await send<RunSummary>('/api/runs', { workId });
  let count = 0;
  const log = (kind: string, payload: object, msAgo = 0) =>
    send<RunEvent>(`/api/runs/${id}/events`, {
      clientId: `test ${++count}`,
      kind,
      payload,
      device: 'test',
      at: new Date(Date.now() - msAgo).toISOString(),
      sentAt: new Date().toISOString(),
    });
  onTestFinished(async () => {
    await log('gummed', {});
  });
  return { id, log };
}

async function keptKinds(run: string): Promise<readonly string[]> {
  const answer = await fetch(`${inject('address')}/api/runs/${run}/events`);
  return ((await answer.json()) as { events: readonly RunEvent[] }).events.map(({ kind }) => kind);
}
