import { expect, inject, it } from 'vitest';
import { describeInBrowser } from './pages.ts';
import { enteredStone } from './records.ts';
import { expectSoundScreen } from './screenRules.ts';

describeInBrowser('media of our own', (pages) => {
  it('are named, asked for by zones, and stay while a work has a zone in them', async () => {
    const page = await pages.atDesk('/tables');
    await page.getByRole('button', { name: 'Name a medium' }).click();
    await page.keyboard.press('Enter');
    await page.getByText('A name with letters or figures').waitFor();
    await page.getByLabel('What it is called').fill('River crayon');
    await page.getByLabel('Which etch it asks for').selectOption('the middle etch');
    await expectSoundScreen(page, 'a medium being named');
    await page.keyboard.press('Enter');
    await page.getByText('in no work yet').waitFor();
    await expectSoundScreen(page, 'the media');

    await drawnWith('river-crayon');
    await page.reload();
    await page.getByText('in one work').waitFor();
    await page.getByRole('button', { name: 'Take out River crayon' }).click();
    const refusal = page.getByRole('alert');
    await refusal.waitFor();
    expect(await refusal.textContent()).toMatch(/River crayon|river-crayon/);
    expect(await page.getByText('in one work').count()).toBe(1);
  });
});

/** A work with one zone in that medium, put there past the screens. */
async function drawnWith(medium: string): Promise<void> {
  const stone = await enteredStone('River stone');
  const zone = {
    id: 'bank',
    name: 'Bank',
    medium,
    polygonMm: [
      [60, 60],
      [160, 60],
      [160, 160],
    ],
  };
  const response = await fetch(`${inject('address')}/api/works`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ title: 'River', stoneId: stone.id, zones: [zone] }),
  });
  if (!response.ok) throw new Error(await response.text());
}
