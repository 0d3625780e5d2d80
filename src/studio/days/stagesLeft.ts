import type { Deadline } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { lineRule, lineStages } from '../bench/lineStages.ts';

/** Where a work is on the line. */
export interface LinePlace {
  /** Stages that were done or begun, in order; at least one, unless nothing is known. */
  readonly told: readonly { readonly stage: LineStage; readonly underWay: boolean }[];
  readonly skipped: readonly LineStage[];
}

export type StagesLeft =
  | { readonly kind: 'left'; readonly stages: readonly LineStage[]; readonly after: LineStage | null }
  | { readonly kind: 'reached' }
  | { readonly kind: 'unknown'; readonly why: string };

const place = new Map(lineStages.map(({ stage }, index) => [stage, index]));
const placeOf = (stage: LineStage) => place.get(stage)!;

/** Stages that leave the line for a while, and after which it goes on where it was. */
function aside(stage: LineStage, goal: LineStage): boolean {
  const correction = placeOf(stage) >= placeOf('hone');
  // a stone is also closed down between two days
  return correction || (stage === 'close-down' && placeOf(goal) < placeOf('close-down'));
}

/**
 * The stages from where a work is to its goal, waiting ones included, in order; a goal that lies behind it is reached.
 * One that is under way counts whole. `after` is the last that was done.
 */
export function stagesLeft(
  { told, skipped }: LinePlace,
  { goal, second, trialProofs }: Pick<Deadline, 'goal' | 'second' | 'trialProofs'>,
): StagesLeft {
  const onLine = told.filter(({ stage }) => !aside(stage, goal) && !lineRule(stage).waiting);
  const last = onLine.at(-1);
  if (!last) return { kind: 'unknown', why: 'which stage was done last is not known' };
  const turn = (stage: LineStage) =>
    stage === 'second-etch' && second === 'quick' ? 'second-etch-quick' : stage;
  if (!last.underWay && placeOf(last.stage) >= placeOf(goal)) return { kind: 'reached' };
  const left: LineStage[] = [];
  let next: LineStage | null = last.underWay ? last.stage : lineRule(last.stage).next;
  for (; next !== null; next = lineRule(next).next) {
    next = turn(next);
    const leftOut = skipped.includes(next) || (next === 'trial-proofs' && !trialProofs);
    if (!leftOut) left.push(next);
    if (next === goal) {
      const before = last.underWay ? onLine.at(-2) : last;
      return { kind: 'left', stages: left, after: before?.stage ?? null };
    }
  }
  return last.underWay || placeOf(last.stage) > placeOf(goal)
    ? { kind: 'reached' }
    : {
        kind: 'unknown',
        why: `the line does not lead from ${lineRule(last.stage).name} to ${lineRule(goal).name}`,
      };
}
