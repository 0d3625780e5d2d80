import { expect, it } from 'vitest';
import { loggedEvents } from './benchHands.ts';
import { describeInBrowser } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';
import { plannedEtch, post, sky, startedWork } from './works.ts';

describeInBrowser('what was poured', (pages) => {
  for (const [size, open] of [
    ['phone', pages.onPhone],
    ['desk', pages.atDesk],
  ] as const) {
    it(`is logged by one touch as planned, by steps, or as used without being measured, on a ${size}`, async () => {
      const { id } = await startedWork(`S-poured-${size}`, { zones: [sky(), post] });
      const { plan } = await plannedEtch(id);
      const page = await open(`/works/${id}/etch`);
      await page.getByRole('button', { name: 'Begin at the stone' }).click();
      await page.waitForURL(/\/bench\//);
      await page.getByRole('button', { name: 'Begin', exact: true }).click();
      await loggedEvents(page, 1);
      await page.getByRole('button', { name: 'What was poured' }).click();
      const [first, second] = plan.batches;
      await page.getByRole('button', { name: 'marks of 5 ml' }).click();
      await expectSoundScreen(page, 'how much was poured');
      await page.getByRole('button', { name: `As planned: ${first!.ml} ml` }).click();
      await page.locator('.poured-logged').getByText(`${first!.ml} ml ± 2.5`).waitFor();
      await page.getByRole('button', { name: '5 ml more' }).click();
      await page.getByRole('button', { name: `Remembered: about ${second!.ml + 5} ml` }).click();
      await page.getByRole('button', { name: `${second!.material} (logged)` }).waitFor();
      await page.getByRole('button', { name: 'Used, not measured' }).click();
      await expectSoundScreen(page, 'what was poured');
      const poured = (await loggedEvents(page, 4)).slice(1);
      expect(poured.map(({ kind, payload }) => [kind, payload])).toMatchObject([
        ['poured', { material: first!.material, how: 'as planned', amount: { value: first!.ml }, mark: 5 }],
        ['poured', { material: second!.material, how: 'remembered', amount: { value: second!.ml + 5 } }],
        ['poured', { how: 'not measured', amount: null, stage: 'first-etch' }],
      ]);
    });
  }
});
