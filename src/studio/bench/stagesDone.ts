import type { ExpectedTime, RunFact, Spent, StageDone } from '../../records/bench.ts';
import { correctionStages, type LineStage, type RunEvent } from '../../records/run.ts';
import type { Moment } from './eventMoments.ts';
import { lineRule } from './lineStages.ts';
import { isoOf, type PlacedEvent } from './placedEvents.ts';
import { measuredSpent, rememberedSpent } from './spent.ts';

/** A stage as the log tells it. */
export interface StageTold {
  readonly stage: LineStage;
  state: StageDone['state'];
  readonly started: Moment | null;
  ended: Moment | null;
  remembered: Spent | null;
  /** Whether its end was forgotten and told afterwards: then its taps do not measure it. */
  endForgotten: boolean;
}

/** The stages in which etch is laid. */
export const etches: readonly LineStage[] = ['first-etch', 'second-etch', 'second-etch-quick', 'spot-etch'];
/** Stages beside the line, which may come at any time. */
export const corrections: readonly LineStage[] = correctionStages;

/** A stage of which nothing but its end is told. */
function notTimed(stage: LineStage, state: 'done' | 'skipped', ended: Moment): StageTold {
  return { stage, state, started: null, ended, remembered: null, endForgotten: false };
}

/**
 * The stages that a log tells, in order. A stage of the line ends where it is said to, or where the next begins;
 * a correction stands beside the line. The first touch of an etch that nobody announced begins one.
 * @param before the stages that were told until then, where `placed` goes on from there; they stay as they are
 */
export function stagesTold(
  placed: readonly PlacedEvent[],
  before: readonly StageTold[] = [],
): {
  readonly stages: readonly StageTold[];
  readonly facts: readonly RunFact[];
} {
  const stages: StageTold[] = before.map((stage) => ({ ...stage }));
  const facts: RunFact[] = [];
  const openOf = (stage: LineStage) => stages.findLast((one) => one.stage === stage && one.state === 'open');
  const twice = ({ sequence, actor }: RunEvent, stage: LineStage) => {
    const words = `${actor ?? 'somebody'} logged ${lineRule(stage).name} a second time; the first counts`;
    facts.push({ fact: 'logged-twice', sequence, words });
  };
  const begin = (stage: LineStage, moment: Moment) => {
    if (!corrections.includes(stage)) {
      for (const one of stages)
        if (one.state === 'open' && !corrections.includes(one.stage)) end(one, moment);
    }
    stages.push({
      stage,
      state: 'open',
      started: moment,
      ended: null,
      remembered: null,
      endForgotten: false,
    });
  };
  for (const { event, moment } of placed) {
    switch (event.kind) {
      case 'stage-started': {
        if (openOf(event.payload.stage)) twice(event, event.payload.stage);
        else begin(event.payload.stage, moment);
        break;
      }
      case 'repeated':
        begin(event.payload.stage, moment);
        break;
      case 'stage-ended': {
        const { stage } = event.payload;
        const open = openOf(stage);
        if (open) end(open, moment);
        else if (stages.at(-1)?.stage === stage && stages.at(-1)?.state === 'done') twice(event, stage);
        else stages.push(notTimed(stage, 'done', moment));
        break;
      }
      case 'skipped': {
        const { stage } = event.payload;
        stages.push(notTimed(stage, 'skipped', moment));
        break;
      }
      case 'correction': {
        const { stage } = event.payload;
        stages.push(notTimed(stage, 'done', moment));
        break;
      }
      case 'laid':
        if (!etches.some(openOf)) begin(unannouncedEtch(stages), moment);
        break;
      case 'remembered': {
        const { stage, seconds } = event.payload;
        if (stage === null || stage === undefined) break;
        const told = stages.findLast((one) => one.stage === stage);
        if (told) {
          told.remembered = rememberedSpent(seconds);
          // who remembers how long it took says that it is over
          if (told.state === 'open') {
            end(told, moment);
            told.endForgotten = true;
          }
        } else {
          const remembered = rememberedSpent(seconds);
          stages.push({
            stage,
            state: 'done',
            started: null,
            ended: moment,
            remembered,
            endForgotten: false,
          });
        }
        break;
      }
      default:
    }
  }
  return { stages, facts };
}

function end(stage: StageTold, moment: Moment): void {
  stage.state = 'done';
  stage.ended = moment;
}

/** The etch that was begun last. */
export function lastEtch(stages: readonly StageTold[]): StageTold | undefined {
  return stages.findLast(({ stage }) => etches.includes(stage));
}

function unannouncedEtch(stages: readonly StageTold[]): LineStage {
  const etched = stages.some(({ stage, state }) => stage === 'first-etch' && state === 'done');
  return etched ? 'second-etch' : 'first-etch';
}

/**
 * A stage with its time beside what is expected. What was measured stands before what is remembered, unless the tap
 * that should have ended it was forgotten.
 */
export function stageDone({ stage, state, started, ended, remembered, endForgotten }: StageTold): StageDone {
  const { name, expected, endSign } = lineRule(stage);
  const tapped = state === 'done' && started && ended && !endForgotten;
  const measured = tapped ? measuredSpent(started, ended) : null;
  const spent = measured ?? remembered;
  return {
    stage,
    name,
    state,
    startedAt: started && isoOf(started),
    endedAt: ended && isoOf(ended),
    spent,
    expected,
    differenceSeconds: spent && expected && beyond(spent.seconds, expected),
    endSign,
  };
}

function beyond(seconds: number, { lowSeconds, highSeconds }: ExpectedTime): number | null {
  if (lowSeconds !== null && seconds < lowSeconds) return seconds - lowSeconds;
  if (highSeconds !== null && seconds > highSeconds) return seconds - highSeconds;
  return lowSeconds === null && highSeconds === null ? null : 0;
}
