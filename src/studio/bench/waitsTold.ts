import type { WaitKind } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';
import { lineRule } from './lineStages.ts';
import type { StageTold } from './stagesDone.ts';
import type { EtchRoute } from './waitRanges.ts';

/** A wait that was measured: from the end of a stage to the start of the next. */
export interface WaitTold {
  readonly wait: WaitKind;
  readonly stage: LineStage;
  readonly seconds: number;
  /** When it ended, ms on the server's time line. */
  readonly endedMs: number;
}

/** Which wait follows a stage; null where none is kept on record. After an acid etch the rest is another one. */
export function waitAfter(stage: LineStage, route: EtchRoute): WaitKind | null {
  switch (stage) {
    case 'first-etch':
      return route === 'acid' ? 'acid-rest' : 'first-rest';
    case 'base':
    case 'second-base':
      return 'under-base';
    case 'second-etch':
      return 'second-rest';
    case 'second-etch-quick':
      return 'quick-etch';
    default:
      return null;
  }
}

/**
 * The waits that a log tells with beginning and end. What was remembered, or only said to be done, tells no wait: its
 * length is not known.
 */
export function waitsTold(stages: readonly StageTold[], route: EtchRoute): readonly WaitTold[] {
  const told: WaitTold[] = [];
  for (const [index, { stage, state, ended }] of stages.entries()) {
    const wait = waitAfter(stage, route);
    if (wait === null || state !== 'done' || ended === null) continue;
    const next = stages.slice(index + 1).find((one) => one.state !== 'skipped' && inLine(one.stage));
    if (!next?.started || next.started.ms < ended.ms) continue;
    told.push({ wait, stage, seconds: (next.started.ms - ended.ms) / 1000, endedMs: next.started.ms });
  }
  return told;
}

/** Whether a stage is of the line and no wait: corrections stand beside it. */
function inLine(stage: LineStage): boolean {
  const { waiting, next } = lineRule(stage);
  return !waiting && (next !== null || stage === 'regrain');
}
