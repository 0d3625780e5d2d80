import type { TestStoneFindings, TrialDeviation } from '../../records/testStoneAnswer.ts';
import { logDeviations } from '../../studio/trials/audit/logDeviations.ts';
import { type ReadRunParts, stateOf } from '../bench/readRun.ts';

/** What the runs of a test stone's work say went otherwise than planned; none where no work is kept. */
export async function readLogDeviations(
  parts: ReadRunParts,
  workId: string | null,
  { stone, findings }: TestStoneFindings,
): Promise<readonly TrialDeviation[]> {
  const work = workId === null ? null : await parts.store.works.find(workId);
  if (!work) return [];
  const [left, top] = work.rectangle?.offsetMm ?? [0, 0];
  const places = work.zones.map(({ id, polygonMm }) => ({
    id,
    polygonMm: polygonMm.map(([x, y]) => [x - left, y - top] as const),
  }));
  const found: TrialDeviation[] = [];
  for (const run of await parts.store.runs.ofWork(work.id)) {
    const plan = run.planId === null ? null : await parts.store.plans.findFirst(work.id, run.planId);
    const layFrom = new Map((plan?.plan.zones ?? []).map((zone) => [zone.id, zone.layFrom]));
    const { contacts } = await stateOf(parts, run);
    const logged = contacts
      .filter(({ stage }) => stage === 'first-etch')
      .map((contact) => ({ ...contact, plannedLayFrom: layFrom.get(contact.place) ?? null }));
    found.push(...logDeviations(stone, logged, places, findings));
  }
  return found;
}
