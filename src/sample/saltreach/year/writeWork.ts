import { createInk } from '../../../application/inks/changeInk.ts';
import { planSecondEtch } from '../../../application/plan/planSecondEtch.ts';
import { planWork } from '../../../application/plan/planWork.ts';
import { createPull } from '../../../application/pulls/createPull.ts';
import { createWork } from '../../../application/works/createWork.ts';
import { type Random, seededRandom } from '../../../foundation/random.ts';
import type { KeptPlan, PlanChoices } from '../../../records/keptPlan.ts';
import type { WorkInput } from '../../../records/work.ts';
import { must } from './must.ts';
import { type PrintWriter, printWriter } from './writePrint.ts';
import { beginRun, type RunWriter } from './writeRun.ts';
import type { YearParts } from './yearClock.ts';
import { isMeasured } from './yearPrints.ts';
import type { YearWork } from './yearWorks.ts';

/** Where ids of one telling of the year begin, so that a folder may hold it many times over. */
export interface YearNames {
  readonly stone: (name: string) => string;
  readonly work: (name: string) => string;
  readonly tannicBatch: string;
}

const hour = 60;

/** The tannic route with the batch that is at hand. */
function choicesOf(tannicBatchId: string): PlanChoices {
  return {
    tableId: 'tannic',
    tableVersion: null,
    tannicBatchId,
    tannic: null,
    people: 1,
    filmMm: 0.5,
    layMm2PerSecond: 1500,
    guardMm: 5,
  };
}

/** One work from graining on, as far as it came: entered, planned, logged tap by tap, proofed. */
export async function writeWork(
  parts: YearParts,
  names: YearNames,
  work: YearWork,
  seed: number,
): Promise<void> {
  const random = seededRandom(seed);
  const { clock } = parts;
  clock.at(Date.parse(`${work.begun}T09:10:00Z`));
  const id = names.work(work.id);
  const input: WorkInput = {
    title: work.title,
    stoneId: names.stone(work.stone),
    head: 'top',
    stage: null,
    origin: { kind: 'new' },
    rectangle: null,
    zones: work.zones,
    photographs: [],
    note: work.note,
  };
  must(await createWork({ ...parts, newId: () => id }, input));
  const print = isMeasured(work) ? await printWriter(parts, work, id) : null;
  await print?.drawn();
  const plan = must(await planWork(parts, id, choicesOf(names.tannicBatch)));
  const run = await beginRun(parts, random, id, work.actor);
  await run.log('picked', { tool: 'batch', id: names.tannicBatch, words: 'tannic solution at hand' });
  await firstEtch(run, work);
  await pourEtch(run, work.actor, plan, names);
  if (work.end === 'resting') return;
  run.wait(work.restHours * hour);
  await washoutAndBase(run, work, random);
  await rollUp(run, work);
  await proof(parts, names, run, work, print);
  await run.stage('close-down', 12);
  run.wait(30 * hour);
  await run.stage('regrain', 70);
}

async function firstEtch(run: RunWriter, work: YearWork): Promise<void> {
  await run.stage('level', 15);
  await run.stage('grain', 55, '80, 180, 220');
  await run.stage('edges', 12);
  await run.stage('gum-border', 8);
  run.wait(3 * hour);
  await run.stage('draw', 150);
  await run.stage('powder', 6);
  await run.log('stage-started', { stage: 'first-etch' }, 4);
  for (const { id } of work.zones) await run.log('laid', { place: id }, 0.1);
  for (let round = 0; round < 3; round++) {
    for (const { id } of work.zones) await run.log('moved', { place: id }, 0.35 / work.zones.length);
  }
  const twice = await run.log('moved', { place: work.zones[0]!.id }, 0.05);
  await run.log('undo', { clientId: twice }, 0.05);
  for (const { id } of work.zones) await run.log('lifted', { place: id }, 0.2);
  await run.log('buffed', { round: 1 }, 1);
  await run.log('buffed', { round: 2 }, 1.5);
  await run.log('stage-ended', { stage: 'first-etch' }, 2);
  await run.log('left', { done: ['gummed', 'lids on', 'cloths in the can'] }, 6);
}

/** What was poured for the first etch: by most as planned, by the visiting artist not logged, by the apprentice with a rest. */
async function pourEtch(run: RunWriter, actor: string, { plan }: KeptPlan, names: YearNames): Promise<void> {
  if (actor === 'A.T.') return;
  for (const { material, ml } of plan.batches) {
    const batchId = material === 'tannic solution' ? names.tannicBatch : null;
    const more = actor === 'J.O.' && material === 'gum' ? 5 : 0;
    await run.log('poured', {
      material,
      how: more > 0 ? 'measured' : 'as planned',
      amount: { value: ml + more, unit: 'ml' },
      mark: 5,
      stage: 'first-etch',
      batchId,
    });
  }
  for (const material of ['rosin', 'talc'])
    await run.log('poured', { material, how: 'not measured', amount: null, stage: 'powder' });
}

async function washoutAndBase(run: RunWriter, work: YearWork, random: Random): Promise<void> {
  // the apprentice logs the washout where the print is to be measured
  const remembered = work.actor === 'J.O.' && !isMeasured(work);
  if (remembered)
    await run.log('remembered', { stage: 'washout', seconds: 180, words: 'about three minutes' });
  else await run.stage('washout', 2.5);
  const ml = 5 * (3 + Math.floor(4 * random()));
  await run.log('poured', {
    material: 'Low-odour white spirit',
    materialId: 'saltreach-material-washout',
    how: remembered ? 'remembered' : 'measured',
    amount: { value: ml, unit: 'ml' },
    mark: remembered ? null : 5,
    stage: 'washout',
  });
  await run.stage('base', 1);
  await run.log('poured', { material: 'base', how: 'not measured', amount: null, stage: 'base' });
  await run.stage('base-air', 6);
  run.wait(work.baseHours * hour);
}

async function rollUp(run: RunWriter, work: YearWork): Promise<void> {
  await run.log('picked', { tool: 'roller', id: 'saltreach-roller-heron', words: 'Heron' });
  await run.log('picked', { tool: 'press', id: 'saltreach-press-shed', words: 'Shed press, S-01' });
  await run.stage('water', 1);
  await run.stage('roll-up', 14);
  if (work.second === null) await run.log('skipped', { stage: 'second-etch' });
  // a pause over tea, under gum or not
  if (work.trouble === null) await run.log('gummed', { words: 'over tea' }, 2);
  run.wait(20);
  if (work.trouble === null) await run.log('gum-off', {}, 1);
}

async function proof(
  parts: YearParts,
  names: YearNames,
  run: RunWriter,
  work: YearWork,
  print: PrintWriter | null,
): Promise<void> {
  const { clock } = parts;
  const id = names.work(work.id);
  const inkId = `${id}-ink`;
  const { soft, stiff, verdict } = work.ink;
  const ink = {
    name: `${work.title}, black`,
    workId: id,
    madeOn: clock.now().toISOString().slice(0, 10),
    softInk: 'soft black',
    stiffInk: 'crayon black',
    softParts: soft,
    stiffParts: stiff,
    inkGrams: 40,
    modifier: '',
    modifierPercent: null,
    strings: [{ at: clock.now().toISOString(), cm: Math.round(2 + soft / 20) / 2, note: '' }],
    verdict,
    verdictWords: work.trouble ?? '',
    note: '',
  };
  must(await createInk({ ...parts, newId: () => inkId }, ink));
  const inkPicked = { id: inkId, words: ink.name };
  await run.log('picked', { tool: 'ink', ...inkPicked });
  await run.log('picked', { tool: 'paper', id: 'saltreach-paper-newsprint', words: 'Newsprint' });
  if (work.second !== null) {
    const readings = work.zones.map(({ id: zone }) => ({ zone, reading: 'as drawn' as const }));
    const choices = { tableId: 'tannic', tableVersion: null, line: work.second, readings, planId: null };
    must(await planSecondEtch(parts, id, choices));
    await run.stage('second-powder', 5);
    await run.stage(work.second === 'quick' ? 'second-etch-quick' : 'second-etch', 6);
    if (work.second === 'full') {
      run.wait(16 * hour);
      await run.stage('second-washout', 2.5);
      await run.stage('second-base', 1);
      await run.stage('second-base-air', 6);
      run.wait(2 * hour);
      await run.stage('second-water', 1);
      await run.stage('second-roll-up', 12);
    } else run.wait(6);
  }
  await run.log('stage-started', { stage: 'proofs' }, 3);
  for (const [index, [lights, middles, darks]] of work.proofs.entries()) {
    run.wait(11);
    const last = index === work.proofs.length - 1;
    const pull = {
      number: index + 1,
      kind: 'proof' as const,
      paper: { id: 'saltreach-paper-newsprint', words: 'Newsprint' },
      damp: false,
      madeAt: clock.now().toISOString(),
      ink: inkPicked,
      charges: 2,
      passes: 8,
      pressureEighths: 6,
      packing: null,
      roller: { id: 'saltreach-roller-heron', words: 'Heron' },
      who: work.actor,
      photographs: print !== null && last ? [await print.proofPhotograph()] : [],
      eye: { lights, middles, darks, ageMinutes: 5, who: work.actor },
      faults: work.trouble !== null && index === 2 ? [{ words: work.trouble, closed: null }] : [],
      remarks: '',
    };
    must(await createPull(parts, id, pull));
    if (work.trouble !== null && index === 2) await run.log('trouble', { words: work.trouble });
  }
  await run.log('stage-ended', { stage: 'proofs' }, 6);
  await print?.compared();
  await run.log('gummed', {}, 3);
}
