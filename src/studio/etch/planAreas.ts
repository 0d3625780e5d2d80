import type { PlanRequest, PlanZone, WashPart } from '../../records/etch.ts';
import { unionArea } from '../../science/geometry/polygonArea.ts';
import { type ChosenRow, chooseRow, spansDeposits } from './chooseRow.ts';
import { groundLetter, zoneLetter } from './zoneLetters.ts';

/** The id of the stone outside all zones: ours, so no zone may carry it. */
export const groundId = 'ground';

/** What is laid, moved and lifted by itself. */
export interface LaidArea {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly areaCm2: number;
  readonly chosen: ChosenRow;
}

/** A zone or the ground; a split wash with the parts that are laid in its stead. */
export interface PlanArea extends LaidArea {
  readonly parts: readonly LaidArea[];
}

/** The ground, then every zone in the order given. */
export function planAreas(request: PlanRequest): PlanArea[] {
  return [groundArea(request), ...request.zones.map((zone, index) => zoneArea(zone, index, request))];
}

/** What is laid by itself: a split wash's parts in place of the wash. */
export function laidAreas(areas: readonly PlanArea[]): LaidArea[] {
  return areas.flatMap((area) => (area.parts.length > 0 ? area.parts : [area]));
}

/** How the part of a split wash is called in the schedule and the order of buffing. */
export function partId(zoneId: string, strength: WashPart['strength']): string {
  return `${zoneId}:${strength}`;
}

function groundArea(request: PlanRequest): PlanArea {
  const stoneMm2 = request.stone.widthMm * request.stone.heightMm;
  const drawnMm2 = unionArea(request.zones.map((zone) => zone.polygonMm));
  const row = request.table.rows.find((candidate) => candidate.strength === 'ground') ?? null;
  const why = row ? 'the stone outside all zones is always etched' : 'this table has no row for the ground';
  return {
    id: groundId,
    letter: groundLetter,
    name: 'ground',
    areaCm2: Math.max(0, stoneMm2 - drawnMm2) / 100,
    chosen: { row, why },
    parts: [],
  };
}

function zoneArea(zone: PlanZone, index: number, request: PlanRequest): PlanArea {
  const area = {
    id: zone.id,
    letter: zoneLetter(index),
    name: zone.name,
    areaCm2: unionArea([zone.polygonMm]) / 100,
    chosen: chooseRow(zone, request.table, request.ownMedia),
  };
  return { ...area, parts: splitParts(zone, area, request) };
}

/** Empty where the zone isn't a wash split into several strengths, or the table lacks a row for one of them. */
function splitParts(zone: PlanZone, area: LaidArea, { table, ownMedia }: PlanRequest): LaidArea[] {
  if (!zone.split || zone.split.parts.length < 2 || !spansDeposits(zone, ownMedia)) return [];
  const parts = zone.split.parts.map((part, index) => ({
    id: partId(zone.id, part.strength),
    letter: `${area.letter}${index + 1}`,
    name: `${zone.name}, ${part.strength}`,
    areaCm2: part.areaCm2,
    chosen: {
      row: table.rows.find((candidate) => candidate.strength === part.strength) ?? null,
      why: zone.split!.why,
    },
  }));
  return parts.every((part) => part.chosen.row) ? parts : [];
}
