import { expect, inject, it } from 'vitest';
import type { RunSummary } from '../../src/records/run.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { plannedEtch, post, sky, startedWork } from './works.ts';

describeInBrowser('what changed', (pages) => {
  it('lays two works side by side, and takes nothing unknown for equal', async () => {
    const high = await startedWork('S-271', { title: 'High Water, first', zones: [sky(), post] });
    const low = await startedWork('S-272', { title: 'High Water, again', zones: [sky(), post] });
    await plannedEtch(high.id);
    await plannedEtch(low.id, { filmMm: 0.8 });
    const first = await begun(high.id);
    await log(first, 'stage-started', { stage: 'washout' }, 0);
    await log(first, 'stage-ended', { stage: 'washout' }, 120);
    await log(first, 'picked', { tool: 'ink', words: 'soft' }, 130);
    const second = await begun(low.id);
    await log(second, 'stage-started', { stage: 'washout' }, 0);
    await log(second, 'stage-ended', { stage: 'washout' }, 300);
    const page = await pages.atDesk(`/works/${low.id}/about`);
    await page.getByRole('link', { name: /Compare with another work/ }).click();
    await page.getByRole('button', { name: /^Compare with / }).waitFor();
    await expectSoundScreen(page, 'nothing picked to compare with');
    await page.getByLabel(/^Earlier/).selectOption({ label: 'High Water, first, on S-271' });
    await page.getByRole('heading', { name: /^\d+ changed, \d+ are not known$/ }).waitFor();
    const line = (table: string, name: string) =>
      page
        .getByRole('table', { name: table, exact: true })
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name, exact: true }) });
    expect(await line('Changed', 'washout: how long').textContent()).toMatch(
      /2:00 min ± 2 s.*5:00 min ± 2 s/,
    );
    expect(await line('Changed', 'depth of the etch').textContent()).toMatch(/0\.5 mm.*0\.8 mm/);
    const oneSided = page
      .getByRole('table', { name: 'Known on one side only, or too roughly' })
      .getByRole('row');
    expect(await oneSided.filter({ hasText: /^ink/ }).textContent()).toMatch(/soft.*not known/);
    await page.getByRole('listitem').filter({ hasText: 'warmth and damp of the room' }).waitFor();
    await page.getByText(/^Unchanged \(/).click();
    await page
      .getByRole('table', { name: 'Unchanged', exact: true })
      .getByRole('row')
      .filter({ hasText: 'medium of Sky' })
      .waitFor();
    await expectSoundScreen(page, 'what changed');
  });

  it('compares runs of one work, and says so where both sides are the same', async () => {
    const work = await startedWork('S-273', { title: 'Neap, twice', zones: [sky()] });
    const [one, two] = [await begun(work.id), await begun(work.id)];
    const page = await pages.onPhone(`/changes/runs/${two}?since=runs/${one}`);
    await page.getByRole('heading', { name: /are not known$/ }).waitFor();
    await page.getByLabel('Which of its runs').first().selectOption(two);
    await page.getByText('Both sides are the same').waitFor();
    await page.getByRole('link', { name: 'To the work' }).click();
    await page.waitForURL(`**/works/${work.id}`);
  });
});

async function begun(workId: string): Promise<string> {
  return (await sent<RunSummary>('/api/runs', { workId })).id;
}

function log(run: string, kind: string, payload: object, seconds: number): Promise<unknown> {
  const at = new Date(Date.UTC(2026, 2, 4, 9) + seconds * 1000).toISOString();
  return sent(`/api/runs/${run}/events`, { clientId: `${kind} ${seconds}`, kind, at, payload });
}

async function sent<T>(path: string, body: object): Promise<T> {
  const response = await fetch(inject('address') + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  if (!response.ok) throw new Error(`${path}: ${await response.text()}`);
  return (await response.json()) as T;
}
