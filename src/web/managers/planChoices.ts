import type { EtchTable, ScheduleChange, TannicSolution } from '../../records/etch.ts';
import type { KeptPlan, PlanChoices } from '../../records/keptPlan.ts';
import type { Work } from '../../records/work.ts';
import { deepestFilmMm } from '../../studio/etch/schedule/changes.ts';
import { sameDrawing } from './drawingDifferences.ts';

/** What a plan starts from where nothing was planned before: the server's own starting values. */
export const startingChoices: PlanChoices = {
  tableId: 'tannic',
  tableVersion: null,
  tannicBatchId: null,
  tannic: null,
  splitFrom: null,
  people: 1,
  filmMm: 0.5,
  stages: 1,
  gapFilmMm: null,
  layMm2PerSecond: 1500,
  guardMm: 5,
};

/** The choices that a plan was made with, to begin the next with; of its table the newest version. */
export function choicesOf({ table, tannicBatchId, request }: KeptPlan): PlanChoices {
  const { tannic, people, filmMm, stages = 1, gapFilmMm = null, layMm2PerSecond, guardMm } = request;
  return {
    tableId: table.id,
    tableVersion: null,
    tannicBatchId,
    tannic: tannicBatchId === null ? tannic : null,
    splitFrom: null,
    people,
    filmMm,
    stages,
    gapFilmMm,
    layMm2PerSecond,
    guardMm,
  };
}

/** The choices of a plan with a change taken up that it offered; null for one that is made on the drawing. */
export function choicesWith(kept: KeptPlan, change: ScheduleChange['change']): PlanChoices | null {
  const choices = choicesOf(kept);
  switch (change) {
    case 'second-person':
      return { ...choices, people: 2 };
    case 'two-stages':
      return { ...choices, stages: 2 };
    case 'deeper-film':
      return { ...choices, filmMm: deepestFilmMm, gapFilmMm: choices.gapFilmMm ?? choices.filmMm };
    case 'merge':
      return null;
    default:
      return change satisfies never;
  }
}

const nothingSaid: TannicSolution = { gramsPerLitre: null, pH: null, gum: null };

/** The choices with something said of the tannic solution; nothing said at all is null. */
export function withTannic(choices: PlanChoices, changes: Partial<TannicSolution>): PlanChoices {
  const tannic = { ...nothingSaid, ...choices.tannic, ...changes };
  const said = Object.values(tannic).some((value) => value !== null);
  return { ...choices, tannicBatchId: null, tannic: said ? tannic : null };
}

/** Whether any row of a table is mixed with the tannic solution. */
export function usesTannic(table: EtchTable): boolean {
  return table.rows.some(
    ({ recipe }) =>
      recipe.kind === 'parts' && recipe.parts.some(({ material }) => material.includes('tannic')),
  );
}

/** Whether a plan was made from the zones as they are now. */
export function planStands({ request, workVersion }: KeptPlan, work: Work): boolean {
  if (workVersion === work.version) return true;
  const frame = { head: work.head, rectangle: null };
  const tone = (given: { readonly mean: number; readonly darkest: number } | null | undefined) =>
    given ? { mean: given.mean, darkest: given.darkest, basis: 'typed' as const } : null;
  return sameDrawing(
    { ...frame, zones: request.zones.map((zone) => ({ ...zone, tone: tone(zone.tone) })) },
    { ...frame, zones: work.zones.map((zone) => ({ ...zone, tone: tone(zone.tone) })) },
  );
}
