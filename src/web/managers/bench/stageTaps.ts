import type { LineStage } from '../../../records/run.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import type { BenchTap } from './benchTaps.ts';

/** What begins a stage. */
export function beginTap(stage: LineStage): BenchTap {
  return {
    kind: 'stage-started',
    payload: { stage },
    words: say('Begin: {lineRule}', { lineRule: told(lineRule(stage).name) }),
    place: null,
  };
}

/**
 * What ends a stage. A time of waiting that usually follows begins with the same touch, since it asks for nothing: the
 * clock that matters then runs by itself.
 */
export function endTaps(stage: LineStage): readonly BenchTap[] {
  const { name, next, waiting } = lineRule(stage);
  const follows = next !== null && lineRule(next).waiting && !waiting ? next : null;
  const rests = waiting && next !== null && lineRule(next).waiting ? next : null;
  const then = follows ?? rests;
  return [
    {
      kind: 'stage-ended',
      payload: { stage },
      words: say('Done: {name}', { name: told(name) }),
      place: null,
    },
    ...(then === null ? [] : [beginTap(then)]),
  ];
}
