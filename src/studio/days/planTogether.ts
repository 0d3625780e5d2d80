import type { DayClash, DayPlan } from '../../records/dayPlan.ts';
import { planDays } from './planDays.ts';
import type { Planning, WorkToPlan } from './planning.ts';
import type { Presence } from './presence.ts';
import { without } from './spans.ts';
import { momentWords } from './zoneWords.ts';

/** Hands that an earlier work has taken. */
interface Taken {
  readonly initials: string;
  readonly from: number;
  readonly to: number;
  readonly workId: string;
  readonly title: string;
  readonly step: string;
}

/**
 * Several works that share the people: the one with the earliest deadline has the first choice, each later one what
 * is left. Where that moves a step, it is said whose hands are taken by what.
 * @returns the plans in order of their deadlines
 */
export function planTogether(works: readonly WorkToPlan[], planning: Planning): readonly DayPlan[] {
  const inOrder = works.toSorted(
    (a, b) => Date.parse(a.deadline.by) - Date.parse(b.deadline.by) || a.workId.localeCompare(b.workId, 'en'),
  );
  const taken: Taken[] = [];
  const plans: DayPlan[] = [];
  let left = planning.people;
  for (const work of inOrder) {
    const alone = planDays(work, planning);
    const plan = taken.length === 0 ? alone : planDays(work, { ...planning, people: left });
    plans.push({ ...plan, clashes: clashesOf(alone, plan, taken) });
    const takes = takenBy(work, plan);
    left = free(left, takes);
    taken.push(...takes);
  }
  return plans;
}

/** The hands that a work takes as it is planned. */
function takenBy({ workId, title }: WorkToPlan, { steps }: DayPlan): readonly Taken[] {
  return steps.flatMap(({ spans, name }) =>
    spans.flatMap(({ from, to, who }) => {
      const span = { from: Date.parse(from), to: Date.parse(to) };
      return who.map((initials) => ({ initials, ...span, workId, title, step: name }));
    }),
  );
}

function free(people: readonly Presence[], taken: readonly Taken[]): readonly Presence[] {
  return people.map(({ initials, spans }) => ({
    initials,
    spans: without(
      spans,
      taken.filter((one) => one.initials === initials),
    ),
  }));
}

/**
 * Steps that would have the hands of somebody whom an earlier work has, and so move; of each other work the last, since
 * those before it move with it.
 */
function clashesOf(alone: DayPlan, plan: DayPlan, taken: readonly Taken[]): readonly DayClash[] {
  const all = alone.steps.flatMap((step, index): readonly (DayClash & { readonly otherId: string })[] => {
    const now = plan.steps[index]!;
    if (now.latestStart === step.latestStart && now.state === step.state) return [];
    const wanted = step.spans.map(({ who, from, to }) => ({
      who,
      from: Date.parse(from),
      to: Date.parse(to),
    }));
    const other = taken.find(({ initials, from, to }) =>
      wanted.some((span) => span.from < to && from < span.to && span.who.includes(initials)),
    );
    if (!other) return [];
    const { timeZone } = plan;
    const said = (iso: string) => momentWords(timeZone, Date.parse(iso));
    const when = momentWords(timeZone, other.from);
    const moved =
      now.latestStart === null
        ? 'no other time is left'
        : step.latestStart === null
          ? `it must start by ${said(now.latestStart)}`
          : `it must start by ${said(now.latestStart)} instead of ${said(step.latestStart)}`;
    const lost = alone.verdict === 'kept' && plan.verdict !== 'kept' ? '; by itself it could be kept' : '';
    return [
      {
        workId: plan.workId,
        otherId: other.workId,
        step: step.name,
        otherTitle: other.title,
        otherStep: other.step,
        words: `${step.name}: ${other.initials} is at ${other.title} (${other.step}) from ${when}; ${moved}${lost}`,
      },
    ];
  });
  const last = new Map(all.map(({ otherId, ...clash }) => [otherId, clash]));
  return [...last.values()];
}
