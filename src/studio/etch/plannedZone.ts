import type { PlannedPart, PlannedZone, PlanRequest } from '../../records/etch.ts';
import { type Amount, etchAmount, strengthShareOfColour, totalAmounts } from './amounts.ts';
import type { LaidArea, PlanArea } from './planAreas.ts';
import { gapOf, type ZoneTimes } from './plannedSchedule.ts';

/** What stands for the basis of a place on which nothing is laid on purpose. */
export const nothingLaid = 'nothing laid';

const untimed: { [name in keyof ZoneTimes]: null } = { layFrom: null, layTo: null, endsAt: null };

/**
 * The row of one zone or the ground: its etch, millilitres, contact, gap and times, and why.
 * @param times by id of what is laid; a zone that is missing there has none.
 */
export function plannedZone(
  area: PlanArea,
  request: PlanRequest,
  times: ReadonlyMap<string, ZoneTimes>,
): PlannedZone {
  const { row, why } = area.chosen;
  const common = {
    id: area.id,
    letter: area.letter,
    name: area.name,
    areaCm2: hundredth(area.areaCm2),
    why,
    parts: [],
  };
  if (area.parts.length > 0) {
    return {
      ...common,
      ...summed(area.parts.flatMap((part) => plannedPart(part, request, times))),
    };
  }
  if (!row) {
    return {
      ...common,
      ...untimed,
      strength: null,
      filmMl: null,
      etch: null,
      contactSeconds: null,
      longestGapSeconds: null,
      basis: area.chosen.bare ? nothingLaid : 'no rule',
    };
  }
  const amount = amountOf(area, row.recipe, request);
  return {
    ...common,
    ...untimed,
    ...times.get(area.id),
    strength: row.strength,
    filmMl: hundredth(amount.filmMl),
    etch: { name: row.name, parts: amount.parts, ml: amount.ml },
    contactSeconds: row.contactSeconds,
    longestGapSeconds: gapOf(row, request),
    basis: row.basis.note,
  };
}

function plannedPart(
  part: LaidArea,
  request: PlanRequest,
  times: ReadonlyMap<string, ZoneTimes>,
): PlannedPart[] {
  const { row } = part.chosen;
  if (!row) return [];
  const amount = amountOf(part, row.recipe, request);
  return [
    {
      id: part.id,
      letter: part.letter,
      areaCm2: hundredth(part.areaCm2),
      filmMl: hundredth(amount.filmMl),
      strength: row.strength,
      etch: { name: row.name, parts: amount.parts, ml: amount.ml },
      contactSeconds: row.contactSeconds,
      longestGapSeconds: gapOf(row, request),
      ...untimed,
      ...times.get(part.id),
      basis: row.basis.note,
    },
  ];
}

/** What the row of a split wash says for all its parts together; lightest part first. */
function summed(parts: readonly PlannedPart[]) {
  const { strength, contactSeconds } = parts[0]!;
  const timed = parts.every((part) => part.layFrom !== null);
  return {
    strength,
    contactSeconds,
    filmMl: hundredth(parts.reduce((sum, part) => sum + part.filmMl, 0)),
    etch: {
      name: `split by tone: ${parts.map((part) => part.etch.name).join(', ')}`,
      parts: totalAmounts(parts.map((part) => part.etch.parts)),
      ml: Math.round(parts.reduce((sum, part) => sum + part.etch.ml, 0) * 1000) / 1000,
    },
    longestGapSeconds: Math.min(...parts.map((part) => part.longestGapSeconds)),
    layFrom: timed ? Math.min(...parts.map((part) => part.layFrom!)) : null,
    layTo: timed ? Math.max(...parts.map((part) => part.layTo!)) : null,
    endsAt: timed ? Math.max(...parts.map((part) => part.endsAt!)) : null,
    basis: [...new Set(parts.map((part) => part.basis))].join('; '),
    parts,
  };
}

function amountOf(
  area: LaidArea,
  recipe: Parameters<typeof etchAmount>[0],
  { filmMm, stone }: PlanRequest,
): Amount {
  return etchAmount(recipe, area.areaCm2, filmMm, strengthShareOfColour(stone.colour));
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}
