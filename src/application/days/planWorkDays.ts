import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { DayPlan, Deadline } from '../../records/dayPlan.ts';
import type { StudioSettings } from '../../records/studio.ts';
import type { Planning } from '../../studio/days/planning.ts';
import { planTogether } from '../../studio/days/planTogether.ts';
import { presenceOf } from '../../studio/days/presence.ts';
import { tooFar } from './deadlines.ts';
import { describedStudio } from './studioSettings.ts';
import { type PlanDaysParts, workToPlan } from './workToPlan.ts';

const dayMs = 86_400_000;
/** How far back a latest start is looked for, and how far on from now and from the deadlines an earliest finish. */
const [daysBack, daysOn] = [120, 180];

/**
 * From when to when a work's steps must start to reach a goal in time, beside all saved deadlines of others; nothing
 * is saved.
 * @returns `not-found`, `studio-not-described` or `deadline-too-far`
 */
export async function planWorkDays(
  parts: PlanDaysParts,
  workId: string,
  deadline: Deadline,
): Promise<Result<DayPlan>> {
  if ((await parts.store.works.find(workId)) === null) {
    return fail(failure('not-found', { what: 'such work' }));
  }
  const far = tooFar(deadline, parts.now());
  if (far) return fail(far);
  const studio = await describedStudio(parts);
  if (!studio.ok) return studio;
  const plans = await planAllDays(parts, studio.value, { workId, deadline });
  return ok(plans.find((plan) => plan.workId === workId)!);
}

/** The plans of all works with a deadline, soonest first; `instead` stands in place of what is saved for its work. */
export async function planAllDays(
  parts: PlanDaysParts,
  studio: StudioSettings,
  instead: { readonly workId: string; readonly deadline: Deadline } | null = null,
): Promise<readonly DayPlan[]> {
  const saved = (await parts.store.deadlines.list()).filter(({ workId }) => workId !== instead?.workId);
  const all = instead === null ? saved : [...saved, instead];
  const works = [];
  for (const { workId, deadline } of all) {
    const work = await parts.store.works.find(workId);
    if (work) works.push(await workToPlan(parts, work, deadline, studio.times));
  }
  return planTogether(works, planningOf(studio, parts.now(), all));
}

function planningOf(
  studio: StudioSettings,
  now: Date,
  deadlines: readonly { readonly deadline: Deadline }[],
): Planning {
  const ms = now.getTime();
  const ends = deadlines.map(({ deadline }) => Date.parse(deadline.by));
  const people = presenceOf(studio, {
    from: Math.min(ms, ...ends) - daysBack * dayMs,
    to: Math.max(ms, ...ends) + daysOn * dayMs,
  });
  return { people, timeZone: studio.timeZone, now: ms };
}
