import type { EtchPlan, PlannedZone, PlanRequest, PlanZone } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import { totalAmounts } from './amounts.ts';
import { batchNeeds, type MeasuredOut } from './batchNeeds.ts';
import { planCautions } from './cautions.ts';
import { liftedRank } from './etchOrder.ts';
import { closeNeighbours } from './neighbours.ts';
import { groundId, type LaidArea, laidAreas, partId, planAreas } from './planAreas.ts';
import { taskOf, type ZoneTimes } from './plannedSchedule.ts';
import { plannedZone } from './plannedZone.ts';
import { roundsSchedule } from './roundsSchedule.ts';

/**
 * Plans the first etch: for every zone and the ground an etch, millilitres, contact and gap; a schedule that
 * the people present can keep, or what would have to change; totals, neighbours, buffing order and cautions.
 * A wash that comes with its split is laid by parts; without one it is planned by its light part.
 * @param request a valid request (see `contract`): zones inside the stone, not self-crossing, ids unique.
 */
export function etchPlan(request: PlanRequest): EtchPlan {
  const areas = planAreas(request);
  const laid = laidAreas(areas);
  const tasks = laid.flatMap((area) => taskOf(area, request));
  const { schedule, times } = roundsSchedule(tasks, request);
  const zones = areas.map((area) => plannedZone(area, request, times));
  const strengths = new Map(
    laid.flatMap((area) => (area.chosen.row ? [[area.id, area.chosen.row.strength] as const] : [])),
  );
  const rowsUsed = laid.flatMap((area) => (area.chosen.row ? [area.chosen.row] : []));
  return {
    schema: 'stonetone/plan/1',
    table: { id: request.table.id, version: request.table.version },
    zones,
    schedule,
    totals: totalAmounts(zones.map((zone) => zone.etch?.parts ?? [])),
    batches: batchNeeds(zones.flatMap(measuredOut), request.tannic),
    neighbours: closeNeighbours(request.zones.flatMap(outlinesLaid), strengths, request.guardMm),
    buffOrder: buffOrder(laid, strengths, times),
    cautions: planCautions(
      request,
      rowsUsed,
      laid.filter(({ chosen }) => !chosen.row && !chosen.bare).map((area) => area.name),
    ),
  };
}

function measuredOut(zone: PlannedZone): MeasuredOut[] {
  const all = zone.parts.length > 0 ? zone.parts : [zone];
  return all.flatMap(({ etch, filmMl }) =>
    etch && filmMl !== null ? [{ zone: zone.id, filmMl, parts: etch.parts, ml: etch.ml }] : [],
  );
}

/** A zone as neighbours see it: whole, or each outline of what its wash was split into. */
function outlinesLaid(zone: PlanZone): PlanZone[] {
  const parts = (zone.split?.parts ?? []).flatMap((part) =>
    part.outlinesMm.map((polygonMm) => ({
      ...zone,
      id: partId(zone.id, part.strength),
      name: `${zone.name}, ${part.strength}`,
      polygonMm,
    })),
  );
  return [zone, ...parts];
}

function buffOrder(
  laid: readonly LaidArea[],
  strengths: ReadonlyMap<string, EtchStrength>,
  times: ReadonlyMap<string, ZoneTimes>,
): string[] {
  const rank = (area: LaidArea) => liftedRank(area.id === groundId ? 'ground' : strengths.get(area.id)!);
  const end = (area: LaidArea) => times.get(area.id)?.endsAt ?? 0;
  return laid
    .filter((area) => strengths.has(area.id))
    .toSorted((a, b) => rank(a) - rank(b) || end(a) - end(b))
    .map((area) => area.id);
}
