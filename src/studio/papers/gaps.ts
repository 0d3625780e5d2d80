import type { RunState } from '../../records/bench.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { type HistoryFact, type WorkStage, workStages } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { Approval, WorkSeries } from '../../records/workSeries.ts';
import { lineRule } from '../bench/lineStages.ts';
import { pouredLines } from '../bench/pouredLines.ts';
import { laidRows } from '../etch/laidRows.ts';
import { planLaidIn } from './report/planLaidIn.ts';

/** What is kept of one work, read as it stands now. */
export interface WorkRecords {
  readonly work: WorkEntry;
  /** The first etch's plan that its runs followed, else the newest; null without one. */
  readonly plan: KeptPlan | null;
  /** Oldest first. */
  readonly runs: readonly RunState[];
  /** Comparisons made from photographs of the work or its stone, oldest first. */
  readonly comparisons: readonly ComparisonEntry[];
  /** Of which of them nobody can tell whether they are of another work that has the same photographs. */
  readonly doubtful: readonly { readonly title: string; readonly others: readonly string[] }[];
  readonly series: WorkSeries;
  /** Newest first, those no longer in force too. */
  readonly approvals: readonly Pick<Approval, 'pull' | 'givenAt' | 'artist' | 'printer' | 'withdrawn'>[];
}

/** Stages whose length a reader asks for, and from which stage of the work on. */
const askedFor: readonly (readonly [readonly LineStage[], WorkStage])[] = [
  [['grain'], 'grained'],
  [['powder'], 'first-etch'],
  [['first-etch'], 'first-etch'],
  [['washout'], 'washed-out'],
  [['base'], 'washed-out'],
  [['base-air'], 'washed-out'],
  [['roll-up'], 'rolled-up'],
  [['second-etch', 'second-etch-quick'], 'second-etch'],
  [['proofs'], 'proofs'],
];

const pastWords: Readonly<Record<HistoryFact, string>> = {
  grain: 'how it was grained',
  'drawn-on': 'when it was drawn',
  media: 'what it was drawn with',
  powder: 'whether it was powdered',
  'first-etch': 'its first etch',
  'first-etch-contact': 'how long the first etch lay',
  rest: 'how long it rested',
  washout: 'its washout',
  base: 'its base',
  'roll-up-ink': 'the ink it was rolled up with',
  'second-etch': 'its second etch',
  pulls: 'how many pulls were made before',
  'last-gummed': 'when it was gummed last',
};

/** What was not recorded of a work and would be asked for, each as words that follow "not recorded:". Nothing is filled. */
export function gapsOf(records: WorkRecords): string[] {
  return gapsWithoutStone(records).map((gap) => `${gap} on ${records.work.stone.name}`);
}

/** The same, where the stone is named beside it. */
export function gapsWithoutStone({ work, plan, runs, comparisons, doubtful, series }: WorkRecords): string[] {
  return [
    ...pastGaps(work),
    ...(plan === null ? (reached(work, 'first-etch') ? ['a plan of the first etch'] : []) : planGaps(plan)),
    ...stageGaps(work, runs),
    ...(plan === null || !reached(work, 'first-etch') ? [] : contactGaps(plan, runs)),
    ...pouredGaps(plan, runs),
    ...(comparisons.some(({ record }) => record?.verdict === 'ok') || !reached(work, 'trial-proofs')
      ? []
      : ['a comparison of print and stone']),
    ...doubtful.map(
      ({ title, others }) =>
        `whether ${title} was measured of this work or of ${others.join(' or ')}, to which the same photographs hang`,
    ),
    ...(reached(work, 'trial-proofs') && series.pulls.length === 0 ? ['its pulls'] : []),
    ...(series.pulls.length > 0 && series.sigma === null ? ['how far one reading strays in this room'] : []),
  ];
}

function reached({ stage }: Pick<WorkEntry, 'stage'>, from: WorkStage): boolean {
  return workStages.indexOf(stage) >= workStages.indexOf(from);
}

function pastGaps({ origin }: WorkEntry): string[] {
  if (origin.kind === 'new') return [];
  return origin.history.filter(({ value }) => value === null).map(({ fact }) => pastWords[fact]);
}

function planGaps({ request, plan }: KeptPlan): string[] {
  if (!plan.batches.some(({ material }) => material === 'tannic solution')) return [];
  const { gramsPerLitre, pH, gum } = request.tannic ?? { gramsPerLitre: null, pH: null, gum: null };
  return [
    ...(gramsPerLitre === null ? ['concentration of the tannic solution'] : []),
    ...(pH === null ? ['pH of the tannic solution'] : []),
    ...(gum === null ? ['whether the tannic solution held gum'] : []),
  ];
}

function stageGaps(work: WorkEntry, runs: readonly RunState[]): string[] {
  const { origin } = work;
  const before = origin.kind === 'new' ? -1 : workStages.indexOf(origin.stage);
  const told = runs.flatMap(({ stages }) => stages);
  return askedFor.flatMap(([stages, from]) => {
    if (!reached(work, from) || workStages.indexOf(from) <= before) return [];
    const done = told.filter(({ stage }) => stages.includes(stage));
    if (done.some(({ state, spent }) => state === 'skipped' || spent !== null)) return [];
    if (from === 'second-etch' && done.length === 0 && work.stage !== 'second-etch')
      return ['whether there was a second etch'];
    return [stages[0] === 'base-air' ? 'time of air after the base' : `${lineRule(stages[0]!).name} time`];
  });
}

function contactGaps({ plan }: KeptPlan, runs: readonly RunState[]): string[] {
  const known = new Set(
    runs.flatMap(({ contacts }) => contacts.filter(({ spent }) => spent !== null).map(({ place }) => place)),
  );
  const missing = laidRows(plan).filter(({ row }) => row.etch !== null && !known.has(row.id));
  if (missing.length === 0) return [];
  return [
    `how long the first etch lay on ${missing.map(({ row, name }) => `${row.letter} ${name}`).join(', ')}`,
  ];
}

/** What was laid by a plan, or used in a washout that was logged, and of which nobody logged how much. */
function pouredGaps(plan: KeptPlan | null, runs: readonly RunState[]): string[] {
  const planned = runs.flatMap((run) =>
    pouredLines(run.poured, planLaidIn(run, plan)?.plan ?? null)
      .filter(({ amounts }) => amounts.length === 0)
      .map(({ material }) => `how much ${material} was poured`),
  );
  const washed = runs.flatMap(({ stages, poured }) =>
    stages
      .filter(
        ({ stage, state }) =>
          (stage === 'washout' || stage === 'second-washout') &&
          state === 'done' &&
          !poured.some((one) => one.stage === stage),
      )
      .map(() => 'how much solvent the washout took'),
  );
  return [...new Set([...planned, ...washed])];
}
