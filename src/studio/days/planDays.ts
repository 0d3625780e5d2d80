import type { DayPlan, DayStep, DayVerdict } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { lineRule } from '../bench/lineStages.ts';
import { etches } from '../bench/stagesDone.ts';
import { backFrom, type ChainPlace, chainOf, onFrom, soonestEnd } from './chain.ts';
import { daySteps, type NeededStep, waitBefore } from './daySteps.ts';
import type { Planning, WorkToPlan } from './planning.ts';
import { assumptions, planReasons, planSentence, stepWhy } from './planWords.ts';
import { stagesLeft } from './stagesLeft.ts';

const minuteMs = 60_000;
const isoOf = (ms: number) => new Date(ms).toISOString();
const wholeMinute = (ms: number) => Math.ceil(ms / minuteMs) * minuteMs;

/**
 * From when to when every step left must start so that the goal is reached by its moment, only while those whom it
 * needs are in the open room; waits run through nights and closed days. Planned with the longest times and the best
 * waits; what the shortest would give is said beside it.
 */
export function planDays(work: WorkToPlan, planning: Planning): DayPlan {
  const { deadline, place } = work;
  const left = stagesLeft(place, deadline);
  const frame = frameOf(work, planning);
  if (left.kind === 'reached') {
    return { ...frame, verdict: 'reached', sentence: `${lineRule(deadline.goal).name} is behind it` };
  }
  if (left.kind === 'unknown') {
    return { ...frame, verdict: 'unknown', sentence: `Not known: ${left.why}`, reasons: [left.why] };
  }
  const steps = daySteps(left.stages, work.timed, work.route);
  const ready = readyOf(work, planning.now, left.after, left.stages);
  const by = Math.floor(Date.parse(deadline.by) / minuteMs) * minuteMs;
  const longest = chainOf(steps, 'longest');
  const shortest = chainOf(steps, 'shortest');
  const earliest = onFrom(planning.people, longest, ready.longest);
  const latest = withoutPause(
    backFrom(planning.people, longest, by),
    earliest,
    etchUnderWay(work, left.stages),
  );
  const told = steps.map((step, index) =>
    stepOf(step, latest[index]!, earliest[index]!, planning, ready.why),
  );
  const ifQuick = quickly(shortest, by, ready.shortest, planning);
  const soonest = soonestEnd(planning.people, shortest, ready.shortest);
  const verdict = verdictOf(told, ifQuick.kept, soonest !== null && soonest <= by);
  const finish = earliest.at(-1)?.placed?.end ?? null;
  const plan: DayPlan = {
    ...frame,
    verdict,
    sentence: '',
    steps: told,
    earliestFinish: finish === null ? null : isoOf(finish),
    ifQuick,
    assumed: assumptions(work, ready.unknownWait, left.stages),
  };
  return { ...plan, sentence: planSentence(plan), reasons: planReasons(plan, planning) };
}

/** Whether the first of the stages left is an etch that is under way: it can't be put off. */
function etchUnderWay({ place }: WorkToPlan, [first]: readonly LineStage[]): boolean {
  return place.told.some(({ stage, underWay }) => underWay && stage === first && etches.includes(stage));
}

/** Places with the first as soon as it can be where it bears no pause. */
function withoutPause(
  latest: readonly ChainPlace[],
  earliest: readonly ChainPlace[],
  bearsNone: boolean,
): readonly ChainPlace[] {
  const [late, soon] = [latest[0]?.placed, earliest[0]?.placed];
  return bearsNone && late && soon && soon.start < late.start ? [earliest[0]!, ...latest.slice(1)] : latest;
}

function frameOf({ workId, title, stoneName, deadline }: WorkToPlan, planning: Planning): DayPlan {
  return {
    workId,
    title,
    stoneName,
    goal: deadline.goal,
    by: deadline.by,
    at: isoOf(planning.now),
    timeZone: planning.timeZone,
    verdict: 'unknown',
    sentence: '',
    reasons: [],
    steps: [],
    earliestFinish: null,
    ifQuick: { latestStart: null, earliestFinish: null, kept: null },
    clashes: [],
    assumed: [],
  };
}

/** From when the first step may start: now, or when the stone has lain long enough. */
function readyOf(
  { since, route }: WorkToPlan,
  nowMs: number,
  after: Parameters<typeof waitBefore>[0],
  stages: Parameters<typeof waitBefore>[1],
): { longest: number; shortest: number; why: 'now' | 'rest'; unknownWait: boolean } {
  const now = wholeMinute(nowMs);
  const wait = waitBefore(after, stages, route);
  if (wait === null) return { longest: now, shortest: now, why: 'now', unknownWait: false };
  if (since === null) {
    const longest = now + wait.wantedMinutes * minuteMs;
    return { longest, shortest: now, why: 'rest', unknownWait: true };
  }
  const rested = (minutes: number) => wholeMinute(Math.max(now, since + minutes * minuteMs));
  const [longest, shortest] = [rested(wait.wantedMinutes), rested(wait.leastMinutes)];
  return { longest, shortest, why: longest > now ? 'rest' : 'now', unknownWait: false };
}

function stepOf(
  step: NeededStep,
  latest: ChainPlace,
  earliest: ChainPlace,
  planning: Planning,
  readyWhy: 'now' | 'rest',
): DayStep {
  const [late, soon] = [latest.placed, earliest.placed];
  const toSpare = late && soon ? (late.start - soon.start) / minuteMs : null;
  const never = (!late && latest.bound !== null) || (!soon && earliest.bound !== null);
  const known = step.hands.highMinutes !== null;
  const tooLate = (toSpare !== null && toSpare < 0) || (known && never);
  const state = tooLate ? 'too-late' : toSpare === null ? 'unknown' : 'in-time';
  // what is late already is done as soon as it can
  const shown = (state === 'too-late' ? soon : late) ?? late;
  const endBy = late?.end ?? (known ? null : latest.bound);
  const from = soon?.start ?? (known ? null : earliest.bound);
  const told: DayStep = {
    ...step,
    latestStart: late && isoOf(late.start),
    latestEnd: endBy === null ? null : isoOf(endBy),
    spans: (shown?.spans ?? []).map((span) => ({
      from: isoOf(span.from),
      to: isoOf(span.to),
      who: shown!.who,
    })),
    earliestStart: from === null ? null : isoOf(from),
    earliestEnd: soon && isoOf(soon.end),
    toSpareMinutes: toSpare,
    state,
    why: '',
  };
  return { ...told, why: stepWhy(told, planning, readyWhy) };
}

function quickly(
  chain: ReturnType<typeof chainOf>,
  by: number,
  ready: number,
  { people }: Planning,
): DayPlan['ifQuick'] {
  const start = backFrom(people, chain, by)[0]?.placed?.start ?? null;
  const end = onFrom(people, chain, ready).at(-1)?.placed?.end ?? null;
  const known = chain.every(({ need }) => need !== null);
  return {
    latestStart: start === null ? null : isoOf(start),
    earliestFinish: end === null ? null : isoOf(end),
    kept: known ? end !== null && end <= by : null,
  };
}

/** @param perhaps whether it could be kept with the shortest of what is known, and no time for the rest */
function verdictOf(steps: readonly DayStep[], quick: boolean | null, perhaps: boolean): DayVerdict {
  if (!perhaps) return 'impossible';
  if (steps.every(({ state }) => state === 'in-time')) return 'kept';
  if (quick === null) return 'unknown';
  return quick ? 'kept-if-quick' : 'impossible';
}
