import { upperFirst } from '../../foundation/upperFirst.ts';
import type { DayPlan, DayStep } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { lineRule } from '../bench/lineStages.ts';
import { longestTogether } from './placing.ts';
import type { Planning, WorkToPlan } from './planning.ts';
import { lengthWords, momentWords } from './zoneWords.ts';

const minuteMs = 60_000;

/** Why a step is too late or can't be said; empty where it is in time. */
export function stepWhy(
  step: Omit<DayStep, 'why'>,
  { people, timeZone, now }: Planning,
  readyWhy: 'now' | 'rest',
): string {
  if (step.state === 'in-time') return '';
  if (step.hands.highMinutes === null) {
    const end =
      step.latestEnd === null
        ? ''
        : `; it must be done by ${momentWords(timeZone, Date.parse(step.latestEnd))}`;
    return `how long it takes is not known: ${step.hands.note}${end}`;
  }
  if (step.state === 'unknown') {
    return step.latestStart === null
      ? 'by when it must start can’t be said before what follows it has a length'
      : 'when it can start at the earliest can’t be said before what comes first has a length';
  }
  if (step.latestStart === null || step.earliestStart === null) return tooFew(step, people);
  const [latest, earliest] = [Date.parse(step.latestStart), Date.parse(step.earliestStart)];
  const words = momentWords(timeZone, latest);
  if (latest < now) return `it had to start by ${words}`;
  const rest = readyWhy === 'rest' ? ', after what must rest before it' : '';
  return `it must start by ${words}; the earliest is ${momentWords(timeZone, earliest)}${rest}`;
}

function tooFew(step: Pick<DayStep, 'people' | 'hands' | 'mayBreak'>, people: Planning['people']): string {
  const longest = longestTogether(people, step.people) / minuteMs;
  const whom = step.people === 2 ? 'two people together' : 'one person';
  if (longest === 0) {
    return step.people === 2
      ? 'it needs two people, and no two are ever here together while the room is open'
      : 'nobody is ever here while the room is open';
  }
  if (!step.mayBreak && longest < step.hands.highMinutes!) {
    return `it needs ${whom} for ${lengthWords(step.hands.highMinutes!)} without a break; the longest is ${lengthWords(longest)}`;
  }
  return `${whom} for ${lengthWords(step.hands.highMinutes!)} is not to be had in time`;
}

/** What the plan comes to, as a headline says it. */
export function planSentence(plan: DayPlan): string {
  const { timeZone, steps, verdict } = plan;
  const goal = lineRule(plan.goal).name;
  const said = (iso: string) => momentWords(timeZone, Date.parse(iso));
  const [first] = steps;
  switch (verdict) {
    case 'kept':
      return `Start by ${said(first!.latestStart!)}: ${first!.name}`;
    case 'kept-if-quick':
      return `${upperFirst(goal)} by ${said(plan.by)} only if all goes quickly`;
    case 'impossible':
      return plan.earliestFinish === null
        ? `${upperFirst(goal)} can’t be reached`
        : `Too late: ${goal} by ${said(plan.earliestFinish)} at the earliest`;
    case 'unknown': {
      const open = steps.find(({ hands }) => hands.highMinutes === null);
      const end = open?.latestEnd ? `; it must be done by ${said(open.latestEnd)}` : '';
      return open ? `${upperFirst(open.name)}: nobody has said how long it takes${end}` : 'Not known';
    }
    case 'reached':
      return `${upperFirst(goal)} is behind it`;
    default:
      return verdict satisfies never;
  }
}

/** What stands in the way, first cause first, and how far one gets. */
export function planReasons(plan: DayPlan, { timeZone }: Planning): readonly string[] {
  const { verdict, steps, ifQuick } = plan;
  if (verdict === 'kept' || verdict === 'reached') return [];
  const said = (iso: string) => momentWords(timeZone, Date.parse(iso));
  const reasons: string[] = [];
  const never = steps.filter(({ state, latestStart }) => state === 'too-late' && latestStart === null);
  const untold = steps.find(({ hands }) => hands.highMinutes === null);
  const first = never[0] ?? (verdict === 'unknown' ? untold : steps.find(({ state }) => state !== 'in-time'));
  if (first) reasons.push(`${upperFirst(first.name)}: ${first.why}.`);
  if (verdict === 'kept-if-quick' && ifQuick.latestStart) {
    reasons.push(
      `With the shortest times and the least rests it must start by ${said(ifQuick.latestStart)} and is done by ${said(ifQuick.earliestFinish!)}.`,
    );
  }
  if (verdict === 'impossible') {
    const by = Date.parse(plan.by);
    const far = steps.findLast(({ earliestEnd }) => earliestEnd !== null && Date.parse(earliestEnd) <= by);
    reasons.push(
      far
        ? `By ${said(plan.by)} it can be as far as ${far.name} (${said(far.earliestEnd!)}).`
        : `By ${said(plan.by)} nothing more of it can be done.`,
    );
    if (ifQuick.earliestFinish) {
      reasons.push(`With the shortest times and the least rests: ${said(ifQuick.earliestFinish)}.`);
    }
  }
  return reasons;
}

/** What was taken for granted about where the work stands. */
export function assumptions(
  { place, since, route }: WorkToPlan,
  unknownWait: boolean,
  stages: readonly LineStage[],
): readonly string[] {
  const said: string[] = [];
  const last = place.told.at(-1);
  if (last?.underWay) said.push(`${upperFirst(lineRule(last.stage).name)} is under way and reckoned whole.`);
  if (since === null && unknownWait) {
    said.push(
      'When the stone began to rest is not logged: reckoned from now, or as rested where all goes quickly.',
    );
  }
  if (route === 'unknown' && stages.includes('first-rest')) {
    said.push('Which etch it gets is not planned: the rest is that of the tannic route, overnight.');
  }
  return said;
}
