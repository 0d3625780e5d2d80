import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import { startServer } from '../../src/server/startServer.ts';
import { layGrid } from '../../src/studio/trials/reading/layGrid.ts';
import { aPicture } from '../server/serverUnderTest.ts';
import { describeInBrowser, phone } from './pages.ts';
import { expectSoundScreen } from './screenRules.ts';

const grid = {
  rows: 2,
  columns: 3,
  originMm: [20, 20],
  squareMm: [40, 40],
  gutterMm: [10, 10],
  turnDegrees: 0,
  steps: 1,
} as const;

/** A server with a stand-in for the engine, which reads a stone called `slow.png` until it is told to stop. */
async function slowReading(): Promise<{ readonly address: string; readonly id: string }> {
  const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-reading-'));
  const started = await startServer({
    dataFolder,
    port: 0,
    screens: inject('screens'),
    measuringModule: new URL('../server/fakeMeasuring.ts', import.meta.url),
  });
  if (!started.ok) throw new Error(started.error.message);
  const { address, stop } = started.value;
  onTestFinished(async () => {
    await stop();
    await rm(dataFolder, { recursive: true, force: true });
  });
  const uploaded = async (name: string, shade: number) => {
    const form = new FormData();
    form.append('photograph', new Blob([(await aPicture(shade)) as Uint8Array<ArrayBuffer>]), name);
    const answer = await fetch(`${address}/api/photographs`, { method: 'POST', body: form });
    return ((await answer.json()) as { id: string }).id;
  };
  const entered = await fetch(`${address}/api/test-stones`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({
      name: 'T-85',
      sizeMm: [200, 150],
      grid,
      factors: [{ name: 'medium' }],
      patches: layGrid(grid).map((patch) => ({ ...patch, treatment: { medium: `crayon #${patch.column}` } })),
      drawn: { photograph: await uploaded('slow.png', 1) },
      prints: [
        { id: 'first', name: 'First print', photograph: await uploaded('first.png', 2) },
        { id: 'second', name: 'Second print', photograph: await uploaded('second.png', 3) },
      ],
    }),
  });
  const { id } = (await entered.json()) as TestStone;
  return { address, id };
}

describeInBrowser('reading a test stone', (pages) => {
  it('tells which print is at which step, is stopped, says so, and goes on with one press', async () => {
    const { address, id } = await slowReading();
    await fetch(`${address}/api/test-stones/${id}/readings`, { method: 'POST' });
    const page = await pages.atDesk('/leaving');
    await page.goto(`${address}/test-stones/${id}`);
    await page.getByRole('heading', { name: 'The patches are being read' }).waitFor();
    const readings = page.getByRole('region', { name: 'What is being read' });
    await readings.getByText('Opening both photographs', { exact: true }).waitFor();
    await readings.getByText('Waiting for its turn', { exact: true }).waitFor();
    expect(await readings.getByText('10 %').count()).toBe(1);
    await expectSoundScreen(page, 'a test stone that is being read');
    await picture(page, 'reading-desk');
    await page.setViewportSize(phone);
    await picture(page, 'reading-phone');
    await page.getByRole('link', { name: 'Photographs' }).click();
    await page.getByRole('heading', { name: 'The drawn stone and its prints' }).waitFor();
    await readings.getByText('Opening both photographs', { exact: true }).waitFor();
    await picture(page, 'reading-photographs');
    await readings.getByRole('button', { name: 'Stop reading' }).click();
    await readings.waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'Reading', exact: true }).click();
    await page.getByText('First print: its reading was stopped before it was done.').waitFor();
    await page.getByText('Second print: its reading was stopped before it was done.').waitFor();
    await expectSoundScreen(page, 'a reading that was stopped');
    await picture(page, 'reading-stopped');
    await page.getByRole('button', { name: 'Go on reading' }).click();
    await page.getByRole('heading', { name: 'The patches are being read' }).waitFor();
    const reading = await (await fetch(`${address}/api/test-stones/${id}/reading`)).json();
    expect((reading as TestStoneReading).prints.map(({ state }) => state)).not.toContain('stopped');
  });
});

async function picture(page: Page, name: string): Promise<void> {
  if (process.env.PICTURES)
    await page.screenshot({ path: `${process.env.PICTURES}/${name}.png`, fullPage: true });
}
