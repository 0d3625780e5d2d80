import type { HandsTime, StepWait } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { lineRule } from '../bench/lineStages.ts';
import { type EtchRoute, waitRange } from '../bench/waitRanges.ts';
import { type StageTime, stageTime, type TimedWork } from './stageTimes.ts';

/** Stages that are done in one go, and what the stone lies after them. */
export interface NeededStep {
  readonly stages: readonly LineStage[];
  readonly name: string;
  readonly people: 1 | 2;
  readonly hands: HandsTime;
  readonly mayBreak: boolean;
  readonly wait: StepWait | null;
}

/** After these the next follows at once: the line leaves no pause. */
const atOnce: readonly LineStage[] = [
  'powder',
  'washout',
  'base',
  'water',
  'second-powder',
  'second-washout',
  'second-base',
  'second-water',
];

/** The stages left as steps with their times, and the waits between them. */
export function daySteps(
  stages: readonly LineStage[],
  work: TimedWork,
  route: EtchRoute,
): readonly NeededStep[] {
  const steps: NeededStep[] = [];
  let going: LineStage[] = [];
  for (const [index, stage] of stages.entries()) {
    if (resting(stage)) continue;
    going.push(stage);
    const next = stages[index + 1];
    if (next && atOnce.includes(stage)) continue;
    steps.push(stepOf(going, work, waitAfter(going, next, route)));
    going = [];
  }
  return steps;
}

/** What a stone must and should lie after the stage that was done last; null where no time is known. */
export function waitBefore(
  after: LineStage | null,
  stages: readonly LineStage[],
  route: EtchRoute,
): StepWait | null {
  return after === null ? null : waitAfter([after], stages[0], route);
}

/** A stage of lying only, overnight or for hours. */
function resting(stage: LineStage): boolean {
  return stage === 'first-rest' || stage === 'base-rest' || stage === 'second-rest';
}

function waitAfter(
  done: readonly LineStage[],
  next: LineStage | undefined,
  route: EtchRoute,
): StepWait | null {
  const last = done.findLast((stage) => !lineRule(stage).waiting);
  const range = last ? waitRange(last, route, true) : null;
  if (range === null || range.openFrom === 0) return null;
  const aired = done.some((stage) => lineRule(stage).waiting);
  const leastMinutes = aired ? 0 : range.openFrom / 60;
  // only where the line says rest is the best time waited for
  const rests = next !== undefined && resting(next);
  const wantedMinutes = rests
    ? Math.max(leastMinutes, (range.bestFrom ?? range.openFrom) / 60)
    : leastMinutes;
  if (wantedMinutes === 0) return null;
  return { leastMinutes, wantedMinutes, basis: range.basis, note: range.note };
}

function stepOf(stages: readonly LineStage[], work: TimedWork, wait: StepWait | null): NeededStep {
  const times = stages.map((stage) => stageTime(stage, work));
  return {
    stages,
    name: stages.map((stage) => lineRule(stage).name).join(', '),
    people: times.some(({ people }) => people === 2) ? 2 : 1,
    hands: togetherOf(stages, times),
    mayBreak: stages.length === 1 && times[0]!.mayBreak,
    wait,
  };
}

function togetherOf(stages: readonly LineStage[], times: readonly StageTime[]): HandsTime {
  if (times.length === 1) return times[0]!.hands;
  const sum = (side: 'lowMinutes' | 'highMinutes') =>
    times.reduce<number | null>((whole, { hands }) => {
      const minutes = hands[side];
      return whole === null || minutes === null ? null : whole + minutes;
    }, 0);
  const bases = new Set(times.map(({ hands }) => hands.basis));
  // the weakest of the parts
  const basis = (['memory', 'common practice', 'typed', 'this room'] as const).find((one) => bases.has(one));
  const note = stages
    .map((stage, index) => `${lineRule(stage).name}: ${times[index]!.hands.note}`)
    .join('; ');
  return { lowMinutes: sum('lowMinutes'), highMinutes: sum('highMinutes'), basis: basis ?? 'memory', note };
}
