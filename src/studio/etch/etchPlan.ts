import type { EtchPlan, EtchStrength, PlannedZone, PlanRequest } from '../../records/etch.ts';
import { unionArea } from '../../science/geometry/polygonArea.ts';
import { etchAmount, strengthShareOfColour, totalAmounts } from './amounts.ts';
import { planCautions } from './cautions.ts';
import { type ChosenRow, chooseRow } from './chooseRow.ts';
import { closeNeighbours } from './neighbours.ts';
import { plannedSchedule, taskOf } from './plannedSchedule.ts';

/** The id of the stone outside all zones: ours, so no zone may carry it. */
export const groundId = 'ground';

/** Work that lies wet together, in the order in which it is buffed. */
const buffedFirst: readonly EtchStrength[] = ['scant', 'light', 'middle', 'dark', 'ground'];

interface Area {
  readonly id: string;
  readonly name: string;
  readonly areaCm2: number;
  readonly chosen: ChosenRow;
}

/**
 * Plans the first etch: for every zone and the ground an etch, millilitres, contact and gap; a schedule that
 * the people present can keep, or what would have to change; totals, neighbours, buffing order and cautions.
 * @param request a valid request (see `contract`): zones inside the stone, not self-crossing, ids unique.
 */
export function etchPlan(request: PlanRequest): EtchPlan {
  const areas = [groundArea(request), ...request.zones.map((zone) => zoneArea(zone, request))];
  const planned = areas.map((area) => plannedZone(area, request));
  const tasks = areas.flatMap((area) => taskOf(area, request.layMm2PerSecond));
  const { schedule, times } = plannedSchedule(tasks, request.people, request.filmMm);
  const zones = planned.map((zone) => ({ ...zone, ...times.get(zone.id) }));
  const strengths = new Map(
    zones.flatMap((zone) => (zone.strength ? [[zone.id, zone.strength] as const] : [])),
  );
  const rowsUsed = areas.flatMap((area) => (area.chosen.row ? [area.chosen.row] : []));
  return {
    schema: 'stonetone/plan/1',
    table: { id: request.table.id, version: request.table.version },
    zones,
    schedule,
    totals: totalAmounts(zones.map((zone) => zone.etch?.parts ?? [])),
    neighbours: closeNeighbours(request.zones, strengths, request.guardMm),
    buffOrder: buffOrder(zones),
    cautions: planCautions(
      request,
      rowsUsed,
      areas.filter((area) => !area.chosen.row).map((area) => area.name),
    ),
  };
}

function groundArea(request: PlanRequest): Area {
  const stoneMm2 = request.stone.widthMm * request.stone.heightMm;
  const drawnMm2 = unionArea(request.zones.map((zone) => zone.polygonMm));
  const row = request.table.rows.find((candidate) => candidate.strength === 'ground') ?? null;
  const why = row ? 'the stone outside all zones is always etched' : 'this table has no row for the ground';
  return {
    id: groundId,
    name: 'ground',
    areaCm2: Math.max(0, stoneMm2 - drawnMm2) / 100,
    chosen: { row, why },
  };
}

function zoneArea(zone: PlanRequest['zones'][number], request: PlanRequest): Area {
  return {
    id: zone.id,
    name: zone.name,
    areaCm2: unionArea([zone.polygonMm]) / 100,
    chosen: chooseRow(zone, request.table, request.ownMedia),
  };
}

function plannedZone(area: Area, request: PlanRequest): PlannedZone {
  const { row, why } = area.chosen;
  const untimed = { layFrom: null, layTo: null, endsAt: null };
  const common = {
    id: area.id,
    name: area.name,
    areaCm2: Math.round(area.areaCm2 * 100) / 100,
    why,
    ...untimed,
  };
  if (!row) {
    return {
      ...common,
      strength: null,
      etch: null,
      contactSeconds: null,
      longestGapSeconds: null,
      basis: 'no rule',
    };
  }
  const amount = etchAmount(
    row.recipe,
    area.areaCm2,
    request.filmMm,
    strengthShareOfColour(request.stone.colour),
  );
  return {
    ...common,
    strength: row.strength,
    etch: { name: row.name, parts: amount.parts, ml: amount.ml },
    contactSeconds: row.contactSeconds,
    longestGapSeconds: row.moveWithinSeconds,
    basis: row.basis.note,
  };
}

function buffOrder(zones: readonly PlannedZone[]): string[] {
  return zones
    .filter((zone) => zone.strength !== null)
    .toSorted(
      (a, b) =>
        buffedFirst.indexOf(a.id === groundId ? 'ground' : a.strength!) -
          buffedFirst.indexOf(b.id === groundId ? 'ground' : b.strength!) ||
        (a.endsAt ?? 0) - (b.endsAt ?? 0),
    )
    .map((zone) => zone.id);
}
