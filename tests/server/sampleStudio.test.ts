import { expect, it } from 'vitest';
import type { InkEntry } from '../../src/records/ink.ts';
import type { PlanSummary } from '../../src/records/keptPlan.ts';
import type { StoneSummary } from '../../src/records/stoneEntry.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import type { WorkEntry, WorkSummary } from '../../src/records/workEntry.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, serverUnderTest } from './serverUnderTest.ts';
import { studioUnderTest } from './studioUnderTest.ts';

it('a fresh data folder holds the invented studio, once; what was changed or put by stays so', async () => {
  const dataFolder = await folderUnderTest();
  const studio = sampleStudio();
  const first = await studioUnderTest({ dataFolder, studio });
  const { works } = await first.json<{ works: WorkSummary[] }>('/api/works');
  expect(works.length).toBe(5);
  expect(works.every(({ sample }) => sample)).toBe(true);
  const lowWater = works.find(({ title }) => title === 'Low Water')!;
  expect(lowWater).toMatchObject({ stoneName: 'S-01', zones: 5 });
  const { verdicts } = await first.json<WorkEntry>(`/api/works/${lowWater.id}`);
  expect(verdicts.sentences).toEqual([expect.stringMatching(/^Sky and Moon share/)]);
  const { plans } = await first.json<{ plans: PlanSummary[] }>(`/api/works/${lowWater.id}/plans`);
  expect(plans).toEqual([
    expect.objectContaining({ feasible: true, table: expect.objectContaining({ id: 'tannic' }) }),
  ]);
  const { inks } = await first.json<{ inks: InkEntry[] }>('/api/inks?verdict=good');
  expect(inks).toMatchObject([{ workTitle: 'Low Water', softGrams: 36, sample: true }]);
  const { testStones } = await first.json<{ testStones: TestStone[] }>('/api/test-stones');
  expect(testStones).toMatchObject([{ name: 'T-1', sample: true, drawn: null }]);
  expect(testStones[0]!.patches).toHaveLength(24);
  const slack = works.find(({ title }) => title === 'Slack Water')!;
  const putBy = { version: slack.version, putBy: true };
  expect((await first.send('PUT', `/api/works/${slack.id}/put-by`, putBy)).status).toBe(200);
  const renamed = { version: lowWater.version, title: 'Low Water, again' };
  expect((await first.send('PATCH', `/api/works/${lowWater.id}`, renamed)).status).toBe(200);
  await first.stop();
  const second = await serverUnderTest({ dataFolder, studio });
  const after = await second.json<{ works: WorkSummary[] }>('/api/works');
  expect(after.works.map(({ title }) => title).toSorted()).toEqual([
    'High Water',
    'Low Water, again',
    'Neap',
    'Spring Tide',
  ]);
  const { stones } = await second.json<{ stones: StoneSummary[] }>('/api/stones');
  expect(stones.map(({ name }) => name)).toEqual(['S-01', 'S-02', 'S-03', 'S-04', 'S-05', 'S-06']);
});

it('a studio that has stones of its own is left alone', async () => {
  const dataFolder = await folderUnderTest();
  const first = await studioUnderTest({ dataFolder });
  await first.stone('S-01');
  await first.stop();
  const second = await serverUnderTest({ dataFolder, studio: sampleStudio() });
  expect(await second.json('/api/works')).toEqual({ works: [], next: null });
});
