import { ok, type Result } from '../../foundation/result.ts';
import type { RackLine } from '../../records/rack.ts';
import type { Week, WeekMark } from '../../records/week.ts';
import { wallClock } from '../../science/calendar/zonedTime.ts';
import { weekOf } from '../../studio/days/weekOf.ts';
import { type ReadRackParts, readRack } from '../bench/readRack.ts';
import { planAllDays } from './planWorkDays.ts';
import { describedStudio } from './studioSettings.ts';
import type { PlanDaysParts } from './workToPlan.ts';

/**
 * Seven days of the room: who is there, what each stone needs when, what is best by then.
 * @param from ISO day; null: today in the studio's zone
 * @returns `studio-not-described`
 */
export async function readWeek(
  parts: PlanDaysParts & ReadRackParts,
  from: string | null,
): Promise<Result<Week>> {
  const studio = await describedStudio(parts);
  if (!studio.ok) return studio;
  const at = parts.now();
  const { lines } = await readRack(parts);
  return ok(
    weekOf({
      studio: studio.value,
      from: from ?? wallClock(studio.value.timeZone, at.getTime()).date,
      at: at.toISOString(),
      plans: await planAllDays(parts, studio.value),
      marks: lines.flatMap(waitMarks),
    }),
  );
}

/** When the best time of a stone's waiting ends, and when what is past it begins. */
export function waitMarks({ workId, title, stoneName, standing }: RackLine): readonly WeekMark[] {
  const { since, range, bestBy, next } = standing;
  const of = { workId, title, stoneName };
  const then = next === null ? '' : `: ${next.words}`;
  const marks: WeekMark[] = [];
  if (bestBy !== null) marks.push({ ...of, kind: 'best', at: bestBy, words: `best by then${then}` });
  if (since !== null && range?.pastFrom != null) {
    const at = new Date(Date.parse(since) + range.pastFrom * 1000).toISOString();
    if (at !== bestBy) marks.push({ ...of, kind: 'past', at, words: `past its best from then${then}` });
  }
  if (since !== null && range?.unknownFrom != null) {
    const at = new Date(Date.parse(since) + range.unknownFrom * 1000).toISOString();
    marks.push({ ...of, kind: 'beyond', at, words: 'beyond what practice knows from then' });
  }
  return marks;
}
