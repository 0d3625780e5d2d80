import ical from 'ical-generator';
import { ok, type Result } from '../../foundation/result.ts';
import type { DayPlan } from '../../records/dayPlan.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { rangeWords } from '../../studio/days/zoneWords.ts';
import { type ReadRackParts, readRack } from '../bench/readRack.ts';
import { planAllDays } from './planWorkDays.ts';
import { waitMarks } from './readWeek.ts';
import { readStudio } from './studioSettings.ts';
import type { PlanDaysParts } from './workToPlan.ts';

const minuteMs = 60_000;

/**
 * The room's moments as iCalendar (RFC 5545): until when a stone's waiting is best, and for every saved deadline the
 * latest start of each step and the deadline itself. Moments are in UTC, which every calendar shows in its reader's
 * zone; the studio's is named. A thing keeps its UID, so that a calendar that asks again moves it.
 */
export async function calendarFeed(parts: PlanDaysParts & ReadRackParts): Promise<Result<string>> {
  const studio = await readStudio(parts);
  const stamp = parts.now();
  const calendar = ical({
    name: 'Stonetone',
    prodId: { company: 'Stonetone', product: 'Stonetone', language: 'EN' },
    timezone: null,
    ttl: 15 * 60,
    x: [{ key: 'X-WR-TIMEZONE', value: studio.timeZone }],
  });
  const add = (uid: string, start: string, end: string, summary: string, description: string) =>
    calendar.createEvent({
      id: `${uid}@stonetone`,
      stamp,
      start: new Date(start),
      end: new Date(end),
      summary,
      description,
    });
  const { lines } = await readRack(parts);
  for (const line of lines) {
    for (const { kind, at, workId, title, stoneName, words } of waitMarks(line)) {
      add(
        `${kind}-${workId}-${line.standing.stage}`,
        at,
        at,
        `${stoneName} ${title}: ${words}`,
        line.standing.words,
      );
    }
  }
  // as long as nobody described the room, nothing is planned
  const plans = studio.version === 0 ? [] : await planAllDays(parts, studio);
  for (const plan of plans) {
    for (const step of plan.steps) {
      const { latestStart, latestEnd, stages, name } = step;
      if (latestStart === null || latestEnd === null) continue;
      add(
        `start-${plan.workId}-${stages[0]}`,
        latestStart,
        latestEnd,
        `${plan.stoneName} ${plan.title}: start ${name} by now`,
        stepDescription(plan, step),
      );
    }
    const end = new Date(Date.parse(plan.by) + minuteMs).toISOString();
    const goal = lineRule(plan.goal).name;
    add(
      `deadline-${plan.workId}`,
      plan.by,
      end,
      `${plan.stoneName} ${plan.title}: ${goal} must be there`,
      plan.sentence,
    );
  }
  return ok(calendar.toString());
}

function stepDescription(plan: DayPlan, { hands, people, why }: DayPlan['steps'][number]): string {
  const time = `${rangeWords(hands.lowMinutes, hands.highMinutes)} (${hands.basis})`;
  const goal = `for ${lineRule(plan.goal).name}`;
  return [`Latest start, ${goal}.`, `${time}, ${people === 2 ? 'two people' : 'one person'}.`, why]
    .filter((part) => part !== '')
    .join(' ');
}
