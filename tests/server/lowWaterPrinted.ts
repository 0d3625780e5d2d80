import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { RunEventKind, RunSummary } from '../../src/records/run.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { lowWater, type StudioUnderTest } from './studioUnderTest.ts';

/** "Low Water" from plan to proofs: etched and logged, pulls read by eye, one print measured against the stone. */
export async function lowWaterPrinted(studio: StudioUnderTest) {
  const made = async <T>(path: string, body: object): Promise<T> => {
    const answer = await studio.send<T>('POST', path, body);
    if (answer.status >= 300) throw new Error(`${path}: ${JSON.stringify(answer.body)}`);
    return answer.body;
  };
  const photograph = await studio.photograph('held.png', 200);
  const stone = await studio.stone('S-01', { colour: 'grey' });
  const work = await studio.work(stone.id, 'Low Water', {
    photographs: [{ photograph: photograph.id, state: 'drawn' }],
  });
  const plan = await made<KeptPlan>(`/api/works/${work.id}/plans`, {
    tableId: 'tannic',
    tannic: { gramsPerLitre: 60, pH: null, gum: false },
    people: 2,
  });
  const run = await made<RunSummary>('/api/runs', { workId: work.id });
  let count = 0;
  const log = (kind: RunEventKind, payload: object, second: number) =>
    made(`/api/runs/${run.id}/events`, {
      clientId: `tap ${++count}`,
      kind,
      at: new Date(Date.parse('2026-03-04T09:00:00Z') + 1000 * second).toISOString(),
      payload,
    });
  await log('stage-started', { stage: 'first-etch' }, 0);
  await log('laid', { place: 'mud' }, 10);
  await log('moved', { place: 'mud' }, 35);
  await log('moved', { place: 'mud' }, 95);
  await log('lifted', { place: 'mud' }, 170);
  await log('trouble', { place: 'mud', words: 'dried at the edge' }, 180);
  const [first] = plan.plan.batches;
  const gum = {
    material: first!.material,
    how: 'as planned',
    amount: { value: first!.ml, unit: 'ml' },
    mark: 5,
  };
  await log('poured', gum, 185);
  await log('poured', { ...gum, how: 'remembered', amount: { value: 10, unit: 'ml' } }, 190);
  await log('stage-ended', { stage: 'first-etch' }, 200);
  await log('poured', { material: 'talc', how: 'not measured', amount: null, stage: 'powder' }, 210);
  const solvent = { material: 'washout solvent', how: 'measured', amount: { value: 25, unit: 'ml' } };
  await log('poured', { ...solvent, stage: 'washout' }, 89_000);
  await log('remembered', { stage: 'roll-up', seconds: 900 }, 90_000);
  await log('stage-started', { stage: 'proofs' }, 91_000);
  await log('stage-ended', { stage: 'proofs' }, 95_000);
  for (const number of [1, 2, 3])
    await made(`/api/works/${work.id}/pulls`, {
      number,
      paper: { words: 'rag 250' },
      eye: { lights: 0.1, middles: 0.4 + number / 100, darks: 0.8, who: 'P.R.' },
    });
  const proof = await studio.photograph('print.png', 90);
  const asked = await made<ComparisonEntry>('/api/comparisons', {
    title: 'Low Water, pull 3',
    sizeMm: [400, 500],
    stone: { photograph: photograph.id },
    proof: { photograph: proof.id },
    zones: lowWater.map(({ id, name, medium, polygonMm }) => ({ id, name, medium, polygonMm })),
  });
  const comparison = await studio.until(asked.id, 'measured');
  const now = await studio.json<WorkEntry>(`/api/works/${work.id}`);
  return { work: now, stone, plan, run, comparison };
}
