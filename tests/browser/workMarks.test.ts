import { expect, it } from 'vitest';
import { describeInBrowser, phone } from './pages.ts';
import { keptPair } from './pair.ts';
import { uploaded } from './pulls.ts';
import { expectSoundScreen } from './screenRules.ts';
import { keptWork, startedWork } from './works.ts';

describeInBrowser('the marks of a work’s photograph', (pages) => {
  it('are asked for, lead to the work rectangle and back, and then to the zones, one lit step at a time', async () => {
    const photograph = await uploaded(keptPair('measured').stone);
    const photographs = [{ photograph, state: 'drawn', takenAt: null, corners: null, note: '' }];
    const work = await startedWork('S-147', { photographs });
    const page = await pages.atDesk(`/works/${work.id}/photographs`);
    const lit = page.locator('.button.act');
    const expectLit = async (words: string) => {
      await lit.filter({ hasText: words }).waitFor();
      expect(await lit.count(), `buttons lit beside “${words}”`).toBe(1);
    };
    await expectLit('Set its four marks');
    await lit.click();
    await page.getByText('Four corner marks were found:').waitFor();
    await expectLit('Set a work rectangle');
    await expectSoundScreen(page, 'the marks of a work’s photograph');
    await lit.click();
    await page.getByRole('heading', { name: 'Where do the four marks lie?' }).waitFor();
    await expectLit('Set a work rectangle');
    await lit.click();
    await page.getByLabel('From the left').waitFor();
    await expectLit('Save, and back to the marks');
    await expectSoundScreen(page, 'a work rectangle set for the marks');
    await page.setViewportSize(phone);
    await lit.click();
    await expectLit('Save the marks');
    await lit.click();
    await page.getByText('Four marks on the corners of the work rectangle.').waitFor();
    await expectLit('Draw the zones over it');
    expect(await keptWork(work.id)).toMatchObject({
      rectangle: { offsetMm: [15, 25] },
      photographs: [{ corners: { of: 'rectangle' } }],
    });
  });
});
