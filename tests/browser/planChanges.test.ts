import { expect, inject, it } from 'vitest';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import { describeInBrowser } from './pages.ts';
import { sent } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';
import { plannedEtch, startedWork } from './works.ts';

/** So large that one pair of hands can't move all of it in time; any one change is enough. */
const wide = (id: string, medium: string, topMm: number) => ({
  id,
  name: id,
  medium,
  polygonMm: [
    [10, topMm],
    [290, topMm],
    [290, topMm + 200],
    [10, topMm + 200],
  ],
});

describeInBrowser('a plan that can’t be kept', (pages) => {
  it('offers a deeper film, a second person and two stages; each is planned by one touch and then led at the bench', async () => {
    const { id } = await startedWork('S-153', {
      zones: [wide('Mud', 'crayon-1', 10), wide('Shoal', 'crayon-2', 250)],
    });
    const page = await pages.atDesk(`/works/${id}`);
    const newest = async () => {
      const { plans } = await sent<{ plans: readonly { id: string }[] }>('GET', `/api/works/${id}/plans`);
      return sent<KeptPlan>('GET', `/api/works/${id}/plans/${plans[0]!.id}`);
    };
    for (const [words, request] of [
      ['Plan it with the deeper film', { filmMm: 0.8, gapFilmMm: 0.5, people: 1 }],
      ['Plan it for two', { people: 2, filmMm: 0.5 }],
      ['Plan it in two stages', { stages: 2, people: 1, filmMm: 0.5 }],
    ] as const) {
      const before = await plannedEtch(id);
      expect(before.plan.schedule.feasible).toBe(false);
      await page.goto(`${inject('address')}/works/${id}/etch`);
      await page.getByRole('heading', { name: 'What would help' }).waitFor();
      expect(await page.locator('.button.act').count(), 'one change is lit').toBe(1);
      if ('stages' in request) await expectSoundScreen(page, 'a plan that can’t be kept');
      await page.getByRole('button', { name: words }).click();
      await page.getByRole('heading', { name: 'In time' }).waitFor();
      await page.locator('.button.act', { hasText: 'Begin at the stone' }).waitFor();
      const after = await newest();
      expect(after.id).not.toBe(before.id);
      expect(after.request).toMatchObject(request);
      expect(after.plan.schedule.feasible).toBe(true);
    }
    await page.getByRole('button', { name: 'Go to the bench' }).click();
    await page.getByRole('heading', { name: /^Begin: lay / }).waitFor();
  });
});
