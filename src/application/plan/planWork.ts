import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { PlanRequest, PlanZone, TannicSolution } from '../../records/etch.ts';
import type { KeptPlan, PlanChoices } from '../../records/keptPlan.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work, WorkZone } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { chosenTable } from '../etchTables/chosenTable.ts';
import type { PictureDesk } from '../pictures/pictureDesk.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import type { PlanDesk } from './planDesk.ts';
import { judgePlanRequest } from './planFromInput.ts';
import { splitByTone } from './splitByTone.ts';

export interface PlanWorkParts extends Pick<SavingParts, 'now' | 'newId'> {
  readonly store: SavingParts['store'] & Pick<KeptRecords, 'stones' | 'photographs'>;
  readonly planDesk: Pick<PlanDesk, 'plan'>;
  readonly desk: Pick<PictureDesk, 'tonesOf'>;
}

/**
 * Plans the first etch of a work as it is kept, and keeps the plan with all that it was made from.
 * @returns `not-found`, `put-by`, `reference-unknown` with the field that names nothing, or the faults of
 *   `judgePlanRequest` and `splitByTone`
 */
export async function planWork(
  { store, now, newId, planDesk, desk }: PlanWorkParts,
  workId: string,
  choices: PlanChoices,
): Promise<Result<KeptPlan>> {
  const asked = await store.decide((records) => readRequest(records, workId, choices));
  if (!asked.ok) return asked;
  const { work } = asked.value;
  // No decision stays open meanwhile: a plan says which version of the work it was made from, so others may go on.
  const split = await splitByTone({ store, desk }, work, asked.value.request, choices.splitFrom ?? null);
  if (!split.ok) return split;
  const request = split.value;
  const plan = await planDesk.plan(request);
  if (!plan.ok) return plan;
  const { id, version, name } = request.table;
  const kept: KeptPlan = {
    id: newId(),
    workId,
    createdAt: now().toISOString(),
    workVersion: work.version,
    table: { id, version, name },
    feasible: plan.value.schedule.feasible,
    tannicBatchId: choices.tannicBatchId,
    request,
    plan: plan.value,
  };
  return store.decide(async (records) => {
    await records.plans.addFirst(kept);
    // whoever went to the stone before there was a plan is led by it all the same
    await records.runs.takePlan(workId, kept.id);
    return ok(kept);
  });
}

/** What is to be planned, judged, with the work that it is taken from. */
async function readRequest(
  records: KeptRecords,
  workId: string,
  choices: PlanChoices,
): Promise<Result<{ readonly request: PlanRequest; readonly work: Work }>> {
  const work = await records.works.find(workId);
  if (work === null) return fail(noSuchWork());
  if (work.putBy) return fail(failure('put-by', { what: `The work ${work.title}` }));
  const request = await requestOf(records, work, choices);
  if (!request.ok) return request;
  const fault = judgePlanRequest(request.value);
  return fault ? fail(fault) : ok({ request: request.value, work });
}

async function requestOf(
  records: KeptRecords,
  work: Work,
  choices: PlanChoices,
): Promise<Result<PlanRequest>> {
  const stone = await records.stones.find(work.stoneId);
  const parts = await requestParts(records, stone!, choices);
  return parts.ok ? ok({ ...parts.value, zones: work.zones.map(planZone) }) : parts;
}

/** All of a plan's request but its zones; `reference-unknown` with the field that names nothing. */
export async function requestParts(
  records: Pick<KeptRecords, 'etchTables' | 'batches' | 'media'>,
  stone: KeptStone,
  choices: PlanChoices,
): Promise<Result<Omit<PlanRequest, 'zones'>>> {
  const table = await chosenTable(records, choices);
  if (!table.ok) return table;
  const tannic = await tannicOf(records, choices);
  if (!tannic.ok) return tannic;
  const { people, filmMm, stages, gapFilmMm, layMm2PerSecond, guardMm } = choices;
  const ownMedia = await records.media.list();
  return ok({
    stone: planStone(stone),
    ownMedia: ownMedia.map(({ id, name, rule }) => ({ id, name, rule })),
    table: table.value,
    tannic: tannic.value,
    people,
    filmMm,
    ...(stages === 2 && { stages }),
    ...(gapFilmMm != null && { gapFilmMm }),
    layMm2PerSecond,
    guardMm,
  });
}

/** The tannic solution as typed, or as its batch says; batches that are put by too, since a bottle may still be in use. */
async function tannicOf(
  { batches }: Pick<KeptRecords, 'batches'>,
  { tannic, tannicBatchId }: PlanChoices,
): Promise<Result<TannicSolution | null>> {
  if (tannicBatchId === null) return ok(tannic);
  const batch = await batches.find(tannicBatchId);
  if (batch?.kind !== 'tannic') {
    return fail(failure('reference-unknown', { what: 'tannic batch', id: tannicBatchId }, 'tannicBatchId'));
  }
  const { gramsPerLitre, pH, gum } = batch;
  return ok({ gramsPerLitre, pH, gum });
}

/** The thinnest corner stands for the stone, as the one that breaks. */
function planStone({ widthMm, heightMm, cornerThicknessMm, colour }: KeptStone): PlanRequest['stone'] {
  const known = cornerThicknessMm.filter((mm) => mm !== null);
  return { widthMm, heightMm, thicknessMm: known.length > 0 ? Math.min(...known) : null, colour };
}

function planZone({ tone, ...zone }: WorkZone): PlanZone {
  return tone === null ? zone : { ...zone, tone: { mean: tone.mean, darkest: tone.darkest } };
}
