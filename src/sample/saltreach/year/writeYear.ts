import { setTimeout as sleep } from 'node:timers/promises';
import { createBatch } from '../../../application/batches/changeBatch.ts';
import { saveDeadline } from '../../../application/days/deadlines.ts';
import type { Services } from '../../../application/openServices.ts';
import { placePulls } from '../../../application/placePulls.ts';
import { placeSample } from '../../../application/placeSample.ts';
import { placeStudio, type SampleStudio } from '../../../application/placeStudio.ts';
import { giveApproval } from '../../../application/pulls/approvals.ts';
import { createStone } from '../../../application/stones/createStone.ts';
import { seededRandom } from '../../../foundation/random.ts';
import type { BatchDraft } from '../../../records/batch.ts';
import { loadSampleComparison } from '../sampleComparison.ts';
import { pulledWorkId, samplePulls } from '../samplePulls.ts';
import { sampleStudio } from '../sampleStudio.ts';
import { must } from './must.ts';
import { writeEdition } from './writeEdition.ts';
import { writeReport } from './writeReport.ts';
import { beginRun } from './writeRun.ts';
import { writeWork, type YearNames } from './writeWork.ts';
import { type YearClock, type YearParts, yearClock, yearParts } from './yearClock.ts';
import { yearWorks } from './yearWorks.ts';

const names: YearNames = {
  stone: (name) => `saltreach-${name}`,
  work: (name) => `saltreach-${name}`,
  tannicBatch: 'saltreach-tannic-1',
};
const seed = 1207;

/** The clock of the year; the services must be opened with its time. */
export function saltreachClock(): YearClock {
  return yearClock('saltreach-year', Date.parse('2025-11-03T09:00:00Z'));
}

/**
 * Writes a year of the invented Saltreach Stone Room, November 2025 to November 2026, through the use cases that people use:
 * the same every time. The folder must hold no stones yet. Throws where a use case refuses.
 */
export async function writeYear(services: Services, clock: YearClock): Promise<void> {
  const parts = yearParts(services, clock);
  const studio = sampleStudio();
  const first = firstWork(studio);
  // its ink was mixed later
  must(await placeStudio(parts, { ...first, inks: [] }));
  for (const name of ['T-1', 'T-2']) {
    const draft = { ...studio.stones[2]!.draft, name, widthMm: 200, heightMm: 200, colour: 'yellow' };
    must(await createStone({ ...parts, newId: () => names.stone(name.toLowerCase()) }, draft));
  }
  await writeBatches(parts, 0);
  await writeLowWater(parts, first);
  for (const [index, work] of yearWorks.entries()) {
    await writeBatches(parts, index + 1);
    const batch = { ...names, tannicBatch: `saltreach-tannic-${index + 2}` };
    await writeWork(parts, batch, work, seed + index);
  }
  clock.at(Math.max(clock.now().getTime() + 1000, Date.parse('2026-11-18T09:00:00Z')));
  must(await placeStudio(parts, studio));
  await writeNow(parts);
  await writeReport(parts, 'saltreach-report', {
    works: [pulledWorkId, ...yearWorks.map(({ id }) => names.work(id))],
    edition: 'saltreach-twelve-tides',
  });
}

/** The studio as it was when the year began: of its works the first alone. */
function firstWork(studio: SampleStudio): SampleStudio {
  const works = studio.works.filter(({ id }) => id === pulledWorkId);
  return { ...studio, works, inks: studio.inks.filter(({ draft }) => draft.workId === pulledWorkId) };
}

/** The solutions of about a month: gum, tannic acid; every third time a washout and a base. */
async function writeBatches(parts: YearParts, index: number): Promise<void> {
  const begun = yearWorks[index - 1]?.begun;
  if (begun) parts.clock.at(Math.max(parts.clock.now().getTime(), Date.parse(`${begun}T08:00:00Z`)));
  const madeOn = parts.clock.now().toISOString().slice(0, 10);
  const note = '';
  const gum: BatchDraft = {
    kind: 'gum',
    name: `Gum ${madeOn}`,
    madeOn,
    note,
    smell: index % 4 === 3 ? 'sweet' : 'fresh',
    baume: index % 3 === 2 ? null : 14,
    pH: index % 2 === 0 ? 4.6 : null,
  };
  const tannic: BatchDraft = {
    kind: 'tannic',
    name: `Tannic ${madeOn}`,
    madeOn,
    note,
    gramsPerLitre: 60,
    pH: [3.3, 3.35, 3.4, 3.45][index % 4]!,
    gum: true,
  };
  must(await createBatch({ ...parts, newId: () => `saltreach-gum-${index + 1}` }, gum));
  must(await createBatch({ ...parts, newId: () => `saltreach-tannic-${index + 1}` }, tannic));
  if (index % 3 !== 0) return;
  for (const kind of ['washout', 'base'] as const) {
    const product = kind === 'washout' ? 'low-odour white spirit' : 'lacquer base';
    const draft: BatchDraft = {
      kind,
      name: `${product} ${madeOn}`,
      madeOn: null,
      note,
      product,
      opened: madeOn,
      lot: '',
    };
    must(await createBatch({ ...parts, newId: () => `saltreach-${kind}-${index + 1}` }, draft));
  }
}

/** "Low Water": its run up to the proofs, the measured pulls, good to print, the edition. */
async function writeLowWater(parts: YearParts, studio: SampleStudio): Promise<void> {
  const { clock } = parts;
  clock.at(Date.parse('2025-11-20T09:30:00Z'));
  const run = await beginRun(parts, seededRandom(seed), pulledWorkId, 'P.R.');
  await run.log('picked', { tool: 'batch', id: names.tannicBatch, words: 'tannic solution at hand' });
  await run.stage('powder', 6);
  await run.stage('first-etch', 8);
  run.wait(19 * 60);
  await run.stage('washout', 2.5);
  await run.stage('base', 1);
  await run.stage('base-air', 6);
  run.wait(66 * 60);
  await run.log('picked', { tool: 'ink', id: 'saltreach-mix-first', words: 'Low Water, first black' });
  await run.stage('water', 1);
  await run.stage('roll-up', 15);
  clock.at(Date.parse('2025-11-25T12:00:00Z'));
  must(await placeStudio(parts, studio));
  must(await placeSample(parts, loadSampleComparison));
  must(await placePulls(parts, samplePulls));
  await measured(parts);
  const approval = must(
    await giveApproval(parts, pulledWorkId, { pull: 7, artist: 'A.T.', printer: 'P.R.' }),
  );
  clock.at(Date.parse('2025-12-02T09:00:00Z'));
  const press = await beginRun(parts, seededRandom(seed + 99), pulledWorkId, 'P.R.');
  await press.log('stage-started', { stage: 'edition' });
  await writeEdition(parts, 'saltreach-twelve-tides', seed, {
    workId: pulledWorkId,
    approvalPullId: approval.pullId,
    approval: approval.tones,
    async printed() {
      await press.log('stage-ended', { stage: 'edition' }, 3);
      await press.stage('close-down', 15);
    },
  });
}

/** Until every photograph of a pull was read; those that were kept with the program are found at once. */
async function measured({ store, pullQueue }: YearParts): Promise<void> {
  pullQueue.wake();
  while ((await store.pullMeasurings.nextWaiting()) || (await store.pullMeasurings.measuring()).length > 0) {
    await sleep(10);
  }
}

/** How the room stands on the last day: a stone under gum, one inked and open, a deadline. */
async function writeNow(parts: YearParts): Promise<void> {
  const { clock } = parts;
  const slack = await beginRun(parts, seededRandom(seed + 7), 'saltreach-slack-water', 'J.O.');
  await slack.log('gum-off', { words: 'to see what it holds' });
  await slack.stage('trial-proofs', 25);
  await slack.log('trouble', { words: 'ropes close at the second pull' });
  const deadline = {
    goal: 'proofs' as const,
    by: '2026-12-11T16:00:00Z',
    second: 'full' as const,
    trialProofs: true,
    times: [],
  };
  clock.at(clock.now().getTime() + 1000);
  must(await saveDeadline(parts, 'saltreach-high-water', { version: 0, deadline }));
}
