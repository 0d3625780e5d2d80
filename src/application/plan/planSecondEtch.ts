import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { KeptPlan, KeptSecondEtch, SecondEtchChoices } from '../../records/keptPlan.ts';
import type { Reading, SecondEtchZone } from '../../records/secondEtch.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { groundId } from '../../studio/etch/planAreas.ts';
import { secondEtchPlan } from '../../studio/etch/secondEtch.ts';
import type { RunFolds } from '../bench/runFolds.ts';
import { chosenTable } from '../etchTables/chosenTable.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';

/** What can be read of the ground: it holds no lights that could be lost and no whites that could close. */
const groundReadings: readonly Reading[] = ['as drawn', 'scum', 'not read'];

export interface PlanSecondEtchParts extends Pick<SavingParts, 'store' | 'now' | 'newId'> {
  /** What runs came to is told anew by a plan. */
  readonly runFolds: Pick<RunFolds, 'planned'>;
}

/**
 * Plans the second etch of a work from how its zones came up, and keeps the plan. Strengths of the first etch are those
 * of the plan that was followed; where there is none they are unknown.
 * @returns `not-found`, `put-by`, `reference-unknown` or `body-malformed` with the path to the field
 */
export async function planSecondEtch(
  { store, now, newId, runFolds }: PlanSecondEtchParts,
  workId: string,
  choices: SecondEtchChoices,
): Promise<Result<KeptSecondEtch>> {
  const planned = await store.decide(async (records): Promise<Result<KeptSecondEtch>> => {
    const work = await records.works.find(workId);
    if (work === null) return fail(noSuchWork());
    if (work.putBy) return fail(failure('put-by', { what: `The work ${work.title}` }));
    const table = await chosenTable(records, choices);
    if (!table.ok) return table;
    const first = await followedPlan(records, workId, choices.planId);
    if (!first.ok) return first;
    const fault = judgeReadings(work, choices);
    if (fault) return fail(fault);
    const zones = secondEtchZones(work, first.value, choices);
    const kept: KeptSecondEtch = {
      id: newId(),
      workId,
      createdAt: now().toISOString(),
      workVersion: work.version,
      table: table.value,
      planId: first.value?.id ?? null,
      zones,
      plan: secondEtchPlan(zones, choices.line, table.value),
    };
    await records.plans.addSecond(kept);
    return ok(kept);
  });
  if (planned.ok) runFolds.planned(workId);
  return planned;
}

/** The plans of a work's second etches, newest first; or `not-found`. */
export async function listSecondEtches(
  { store }: { readonly store: Pick<KeptRecords, 'works' | 'plans'> },
  workId: string,
): Promise<Result<readonly KeptSecondEtch[]>> {
  if ((await store.works.find(workId)) === null) return fail(noSuchWork());
  return ok(await store.plans.listSecond(workId));
}

async function followedPlan(
  { plans }: Pick<KeptRecords, 'plans'>,
  workId: string,
  planId: string | null,
): Promise<Result<KeptPlan | null>> {
  if (planId === null) return ok(await plans.newestFirst(workId));
  const plan = await plans.findFirst(workId, planId);
  if (plan !== null) return ok(plan);
  return fail(failure('reference-unknown', { what: 'plan of this work', id: planId }, 'planId'));
}

function judgeReadings(work: Work, { readings }: SecondEtchChoices): Failure | null {
  const read = new Set<string>();
  for (const [index, { zone, reading }] of readings.entries()) {
    const path = `readings[${index}]`;
    if (zone !== groundId && !work.zones.some(({ id }) => id === zone)) {
      return failure('reference-unknown', { what: 'zone in this work', id: zone }, `${path}.zone`);
    }
    if (read.has(zone)) {
      return failure('body-malformed', { why: `${zone} is read twice` }, `${path}.zone`);
    }
    read.add(zone);
    if (zone === groundId && !groundReadings.includes(reading)) {
      const why = `the ground can only be read as ${groundReadings.join(', ')}`;
      return failure('body-malformed', { why }, `${path}.reading`);
    }
  }
  return null;
}

/** The ground, then every zone of the work; what was not read says so, and the ground as it should be. */
function secondEtchZones(
  work: Work,
  first: KeptPlan | null,
  { readings }: SecondEtchChoices,
): readonly SecondEtchZone[] {
  const readingOf = (id: string) => readings.find(({ zone }) => zone === id)?.reading;
  const strengthOf = (id: string) => first?.plan.zones.find((zone) => zone.id === id)?.strength ?? null;
  return [
    { id: groundId, name: groundId, first: 'ground', reading: readingOf(groundId) ?? 'as drawn' },
    ...work.zones.map(({ id, name }) => ({
      id,
      name,
      first: strengthOf(id),
      reading: readingOf(id) ?? 'not read',
    })),
  ];
}
