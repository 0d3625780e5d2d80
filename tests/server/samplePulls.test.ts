import { expect, it, vi } from 'vitest';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { PullSuspects } from '../../src/records/suspects.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import type { WorkSeries } from '../../src/records/workSeries.ts';
import { pulledWorkId, samplePulls as pulls } from '../../src/sample/saltreach/samplePulls.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, serverUnderTest } from './serverUnderTest.ts';

vi.setConfig({ testTimeout: 300_000 });

/** There is no such module: whatever were measured would fail. */
const pullModule = new URL('./nothing is measured.ts', import.meta.url);

async function settled(call: () => Promise<{ pulls: PullEntry[] }>): Promise<readonly PullEntry[]> {
  for (;;) {
    const { pulls: found } = await call();
    const states = found.flatMap(({ photographs }) => photographs.map(({ measuring }) => measuring?.state));
    if (found.length === 7 && states.every((state) => state !== 'waiting' && state !== 'measuring'))
      return found;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

it('a fresh data folder has pulls that were measured beforehand, and an answer that rests on them', async () => {
  const dataFolder = await folderUnderTest();
  const options = { dataFolder, studio: sampleStudio(), pulls, pullModule };
  const server = await serverUnderTest(options);
  const path = `/api/works/${pulledWorkId}`;
  const found = await settled(() => server.json(`${path}/pulls`));
  expect(found.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  expect(found.every(({ sample }) => sample)).toBe(true);
  const states = found.map(({ photographs }) => photographs.map(({ measuring }) => measuring?.state));
  const one = ['measured'];
  expect(states).toEqual([[], one, one, ['measured', 'measured'], one, one, one]);
  const series = await server.json<WorkSeries>(`${path}/series`);
  expect(series.noise).toMatchObject({ origin: 'repeats', sheets: 1 });
  expect(series.pulls.map(({ how }) => how)).toEqual(['eye', ...Array<string>(6).fill('camera')]);
  expect(series.goodToPrint).toMatchObject({ met: true, pulls: [5, 6, 7] });
  const since = await server.json<{ differences: unknown[] }>(`${path}/pulls/${found[3]!.id}/since`);
  expect(since.differences).toContainEqual(expect.objectContaining({ verdict: 'changed', what: 'ink' }));
  const beside = await server.json(`${path}/pulls/${found[6]!.id}/against/last`);
  expect(beside).toMatchObject({ number: 6, maps: { pxPerMm: 2 } });
  const stone = await server.json(`${path}/pulls/${found[6]!.id}/against/drawn`);
  expect(stone).toMatchObject({ measure: 'coverage' });
  const suspects = await server.json<PullSuspects>(`${path}/suspects`);
  expect(suspects).toMatchObject({ pull: { number: 7 }, before: 6 });
  // More than two pulls of one paper and age: what grows is told over all of them.
  expect(suspects.answer.unknown).not.toContain('missingGrows');
  expect(suspects.answer.warnings.join()).not.toMatch(/no measured pull before it/);
  await server.stop();
  const again = await serverUnderTest({
    ...options,
    pulls: { ...pulls, load: () => expect.unreachable('the pulls are there') },
  });
  expect((await again.json<{ pulls: unknown[] }>(`${path}/pulls`)).pulls).toHaveLength(7);
});

it('pulls are left out where the work was changed since', async () => {
  const dataFolder = await folderUnderTest();
  const first = await serverUnderTest({ dataFolder, studio: sampleStudio(), pullModule });
  const path = `/api/works/${pulledWorkId}`;
  const { version } = await first.json<WorkEntry>(path);
  const putBy = { method: 'PUT', headers: { 'content-type': 'application/json' } };
  await first.json(`${path}/put-by`, { ...putBy, body: JSON.stringify({ version, putBy: true }) });
  await first.stop();
  const second = await serverUnderTest({ dataFolder, studio: sampleStudio(), pulls, pullModule });
  expect((await second.json<{ pulls: unknown[] }>(`${path}/pulls`)).pulls).toEqual([]);
});
