import type { Standing } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';
import type { Work, WorkStage } from '../../records/work.ts';
import type { Moment } from './eventMoments.ts';
import type { RunFold } from './foldRun.ts';
import { gumToSee } from './gumToSee.ts';
import { lineRule, lineStages } from './lineStages.ts';
import { stagePast } from './stagePast.ts';
import { etches, type StageTold } from './stagesDone.ts';
import { type EtchRoute, waitRange, waitVerdict } from './waitRanges.ts';
import { waitAfter } from './waitsTold.ts';

/** What a standing is worked out from. */
export interface StandingInput extends Pick<RunFold, 'stages' | 'hand' | 'lastSign'> {
  readonly work: Pick<Work, 'stage' | 'origin'>;
  /** Whether some place still carries etch. */
  readonly wet: boolean;
  readonly route: EtchRoute;
  /** What was done to it at the press last, where its edition was printed: it counts where no log tells of later. */
  readonly press?: Hand | null;
  readonly now: Date;
}

type Hand = NonNullable<RunFold['hand']>;

type Known = Standing['gummed'];

/** What a work's typed stage says, where no run says more: when it was reached is then unknown. */
const typedStages: Readonly<Record<WorkStage, LineStage>> = {
  grained: 'grain',
  drawn: 'draw',
  'first-etch': 'first-etch',
  'washed-out': 'washout',
  'rolled-up': 'roll-up',
  'trial-proofs': 'trial-proofs',
  'second-etch': 'second-etch',
  proofs: 'proofs',
  edition: 'edition',
  'closed-down': 'close-down',
  regrained: 'regrain',
};

interface Condition {
  readonly stage: LineStage;
  readonly open: boolean;
  readonly since: Moment | null;
  readonly gummed: Known;
  readonly inked: Known;
}

/**
 * The state of a stone, gummed or not foremost, and what its waiting is: too soon, open, best, past best or unknown.
 * Inked and ungummed asks for gum now. What nobody logged is unknown, never taken for safe.
 */
export function standingOf(input: StandingInput): Standing {
  const condition = conditionOf(input);
  const { stage, open, since, gummed, inked } = condition;
  const { wet, route, now } = input;
  const etching = wet || (open && etches.includes(stage));
  const gumNow = inked === 'yes' && gummed === 'no' && !etching;
  // a stone that is being inked or printed pauses from the last sign of work on
  const from = open && gumNow ? laterOf(input.lastSign, since) : since;
  const seconds = from === null ? null : Math.max(0, (now.getTime() - from.ms) / 1000);
  const busy = wet || (open && !gumNow);
  const range = busy ? null : waitRange(stage, route, gummed === 'yes');
  const next = nextOf(condition, gumNow, wet, input.stages);
  const bound = range?.bestTo ?? range?.pastFrom ?? null;
  return {
    stage,
    words: wordsOf(condition, wet),
    since: since && new Date(since.ms).toISOString(),
    gummed,
    inked,
    gumNow,
    wet,
    verdict: busy ? 'now' : waitVerdict(range, seconds),
    range,
    wait: range && waitAfter(stage, route),
    next,
    bestBy: from && bound !== null ? new Date(from.ms + bound * 1000).toISOString() : null,
    risk: riskOf(condition, gumNow, wet),
  };
}

function laterOf(one: Moment | null, other: Moment | null): Moment | null {
  if (one === null || other === null) return one ?? other;
  return one.ms > other.ms ? one : other;
}

function conditionOf({ work, stages, hand, press }: StandingInput): Condition {
  const told = stages.filter(({ state, stage }) => state !== 'skipped' && !lineRule(stage).waiting);
  const last = told.at(-1);
  const waited = stages.find(({ stage }) => lineRule(stage).waiting);
  let condition = last ? toldCondition(told, before(told[0]!.stage, work)) : typedCondition(work);
  if (!last && waited?.started) condition = { ...condition, since: waited.started };
  const latest = last?.ended ?? last?.started ?? null;
  const touched: (Hand & { readonly inked?: Known })[] = [
    ...(hand ? [hand] : []),
    // what printed is inked, whatever was done to its gum since
    ...(press ? [{ ...press, inked: 'yes' as const }] : []),
  ];
  for (const { moment, gummed, inked } of touched.sort((a, b) => a.moment.ms - b.moment.ms)) {
    if (latest !== null && moment.ms < latest.ms) continue;
    const gum = gummed ? 'yes' : 'no';
    condition = { ...condition, since: moment, gummed: gum, inked: inked ?? condition.inked };
  }
  return condition;
}

/** What is known of the stone before a run's first stage: as typed, where that lies before it in the line. */
function before(first: LineStage, work: StandingInput['work']): Pick<Condition, 'gummed' | 'inked'> {
  const typed = typedCondition(work);
  const place = (stage: LineStage) => lineStages.findIndex((one) => one.stage === stage);
  return place(typed.stage) < place(first) ? typed : { gummed: 'unknown', inked: 'unknown' };
}

function toldCondition(
  told: readonly StageTold[],
  { gummed, inked }: Pick<Condition, 'gummed' | 'inked'>,
): Condition {
  for (const { stage, state } of told) {
    const rule = lineRule(stage);
    const holds = rule.holdsFrom === 'start' || state === 'done';
    if (holds && rule.gummed !== null) gummed = rule.gummed ? 'yes' : 'no';
    // under fresh etch the gum is not yet whole
    if (!holds && rule.gummed) gummed = 'no';
    if (holds && rule.inked !== null) inked = rule.inked ? 'yes' : 'no';
  }
  const { stage, state, started, ended } = told.at(-1)!;
  return { stage, open: state === 'open', since: ended ?? started, gummed, inked };
}

function typedCondition({ stage, origin }: StandingInput['work']): Condition {
  const rule = lineRule(typedStages[stage]);
  const entered = origin.kind === 'halfway' && origin.stage === stage ? origin.gummed : null;
  const bare: readonly WorkStage[] = ['grained', 'drawn', 'regrained'];
  const gummed = bare.includes(stage) ? 'no' : (entered ?? 'unknown');
  const inked = rule.inked === null ? 'unknown' : rule.inked ? 'yes' : 'no';
  return { stage: rule.stage, open: false, since: null, gummed, inked };
}

function nextOf(
  { stage, open, gummed }: Condition,
  gumNow: boolean,
  wet: boolean,
  stages: readonly StageTold[],
): Standing['next'] {
  if (wet) return { stage, words: 'lift and buff the etch' };
  if (gumNow) return { stage: 'close-down', words: 'gum it now, buff it tight' };
  if (open) return { stage, words: `finish: ${lineRule(stage).name}` };
  let next = lineRule(stage).next;
  const settled = (one: LineStage) =>
    lineRule(one).waiting || stages.some((told) => told.stage === one && told.state === 'skipped');
  while (next !== null && settled(next)) next = lineRule(next).next;
  const look = gumToSee({ gummed, wet });
  if (next === null) return look ? { stage, words: 'see whether it is gummed' } : null;
  return { stage: next, words: `${look ? 'see whether it is gummed, then: ' : ''}${lineRule(next).name}` };
}

function wordsOf({ stage, open, gummed, inked }: Condition, wet: boolean): string {
  const done = open ? `${lineRule(stage).name} under way` : stagePast[stage];
  if (wet) return `${done}, etch on the stone`;
  const face = stage === 'gum-border' ? 'the face not gummed' : 'not gummed';
  const gum = { yes: 'gummed', no: face, unknown: 'gummed or not: not known' }[gummed];
  return inked === 'yes' ? `${done}, inked, ${gum}` : `${done}, ${gum}`;
}

function riskOf({ stage, gummed, inked }: Condition, gumNow: boolean, wet: boolean): string {
  if (wet) return 'etch that dries where it lies burns';
  if (gumNow) return 'inked without gum: bare stone takes grease from air, hands and paper';
  if (inked === 'yes' && gummed === 'unknown') return 'if it lies without gum, bare stone takes grease';
  if (stage === 'washout' || stage === 'second-washout') {
    return 'the image lies without ink or base: rub in the base next';
  }
  if (stage === 'water' || stage === 'second-water') return 'bare stone that dries takes ink';
  return '';
}
