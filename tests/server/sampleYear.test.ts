import { expect, it, vi } from 'vitest';
import { comparisonFileNames } from '../../src/application/comparison/comparisonFileNames.ts';
import { openServices } from '../../src/application/openServices.ts';
import type { ComparisonEntry, ComparisonSummary } from '../../src/records/comparisonEntry.ts';
import type { KnownHolds } from '../../src/records/knownHolds.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import type { Reminder, WaitRecord } from '../../src/records/rack.ts';
import type { SetReport } from '../../src/records/setReport.ts';
import type { WorkSummary } from '../../src/records/workEntry.ts';
import type { WorkSeries } from '../../src/records/workSeries.ts';
import { saltreachClock, writeYear } from '../../src/sample/saltreach/year/writeYear.ts';
import { folderUnderTest, serverUnderTest } from './serverUnderTest.ts';

vi.setConfig({ testTimeout: 180_000 });

/** There is no such module: whatever were measured would fail. */
const nothing = new URL('./nothing is measured.ts', import.meta.url);
const modules = { pullModule: nothing, measuringModule: nothing };

it('a year of the invented studio has something true for every screen', async () => {
  const dataFolder = await folderUnderTest();
  const clock = saltreachClock();
  const opened = await openServices({ dataFolder, largestBytes: 50e6, now: clock.now, ...modules });
  if (!opened.ok) throw new Error(opened.error.message);
  await writeYear(opened.value, clock);
  await opened.value.close();
  const server = await serverUnderTest({ dataFolder, ...modules });
  const { works } = await server.json<{ works: WorkSummary[] }>('/api/works');
  expect(works).toHaveLength(16);
  expect(works.filter(({ stage }) => stage === 'regrained').length).toBeGreaterThan(8);
  const { waits } = await server.json<{ waits: WaitRecord[] }>('/api/rack/waits');
  const rest = waits.find(({ wait }) => wait === 'first-rest')!;
  expect(rest.bands.map(({ verdict, waits }) => [verdict, waits])).toEqual([
    ['too-soon', 3],
    ['best', 3],
  ]);
  const [short, long] = rest.bands.map(({ share }) => share!);
  expect(short!.low).toBeLessThan(short!.value);
  expect(long!.value).toBeGreaterThan(short!.value);
  expect(rest.unmeasured).toBeGreaterThanOrEqual(3);
  const { reminders } = await server.json<{ reminders: Reminder[] }>('/api/rack');
  expect(reminders).not.toEqual([]);
  const { entries } = await server.json<{ entries: LedgerEntry[] }>(
    '/api/editions/saltreach-twelve-tides/ledger',
  );
  expect(entries.filter(({ kind }) => kind === 'reading').length).toBeGreaterThanOrEqual(8);
  const edition = await server.json<{ prints: { kind: string }[] }>('/api/editions/saltreach-twelve-tides');
  expect(edition.prints.filter(({ kind }) => kind === 'edition')).toHaveLength(10);
  const report = await server.json<SetReport>('/api/reports/saltreach-report/report.json');
  const figure = (name: string) => report.figures.find((one) => one.name === name);
  expect(report.unknownFigures).toEqual([]);
  expect(figure('tannic solution ml')!.value).toBeGreaterThan(0);
  expect(figure('tannic solution poured ml')!.value).toBeGreaterThan(0);
  expect(figure('tannic solution only planned ml')!.value).toBeGreaterThan(0);
  expect(figure('Low-odour white spirit ml')!.value).toBeGreaterThan(0);
  expect(figure('rosin ml')!.value).toBeNull();
  const shown = report.parts.flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === 'comparison'));
  expect(shown).toHaveLength(6);
  const listed = await server.json<{ comparisons: ComparisonSummary[] }>('/api/comparisons');
  expect(listed.comparisons.map(({ state, sample }) => [state, sample])).toEqual(
    Array.from({ length: 6 }, () => ['measured', true]),
  );
  const measured = await server.json<ComparisonEntry>('/api/comparisons/saltreach-ebb-measured');
  for (const name of comparisonFileNames.filter((one) => one !== 'sheet.png')) {
    expect(measured.files).toContain(name);
  }
  const known = await server.json<KnownHolds>('/api/known-holds');
  expect(
    known.media.flatMap(({ holds }) => holds.filter(({ works: seen }) => seen > 0)).length,
  ).toBeGreaterThan(3);
  for (const id of ['ebb', 'flood-mark', 'slip', 'test-washes', 'mooring']) {
    const { pulls } = await server.json<WorkSeries>(`/api/works/saltreach-${id}/series`);
    expect(pulls.at(-1)!.how, id).toBe('camera');
  }
  for (const { id } of works) {
    for (const path of [
      '',
      '/runs',
      '/plans',
      '/pulls',
      '/series',
      '/changes?since=saltreach-low-water',
      '/protocol.json',
    ]) {
      expect((await server.call(`/api/works/${id}${path}`)).status, id + path).toBe(200);
    }
  }
});
