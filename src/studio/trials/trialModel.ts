import type { Stratum, TrialColumns, TrialRow } from '../../records/trial.ts';
import { estimableBy, independentColumns, setsOf } from '../../science/statistics/mixed/estimable.ts';

/** A sum of coefficients that means something to a printer. */
interface Marginal {
  readonly term: string;
  readonly level: string;
  readonly weights: readonly number[];
  /** Can it be told free of the other treatment? */
  readonly told: boolean;
  /** Which levels of its term can be compared: those of one number. */
  readonly set: number;
  readonly rows: readonly TrialRow[];
}

/** What is compared with what, as regressors and as sums of their coefficients. */
export interface TrialModel {
  readonly design: readonly (readonly number[])[];
  readonly terms: readonly {
    readonly term: string;
    readonly stratum: Stratum;
    readonly hypotheses: readonly (readonly number[])[];
  }[];
  readonly means: readonly Marginal[];
  /** Combinations of the two treatments that no patch got. */
  readonly missingCells: readonly string[];
  /** Levels that never stood apart from the other treatment, by term: the sets within which they can be compared. */
  readonly apart: readonly { readonly term: string; readonly sets: readonly (readonly string[])[] }[];
}

/**
 * The treatments' part of a trial's model: one mean for every combination where each was tried, so that a level's mean
 * counts every level of the other treatment alike; else the sum of both treatments' effects, of which what can't be told apart
 * is left out.
 * @param rows at least one; every named column of it filled.
 */
export function trialModel(rows: readonly TrialRow[], columns: TrialColumns): TrialModel {
  const whole = levelsOf(rows.map((row) => row.whole));
  const sub = levelsOf(rows.map((row) => row.sub));
  const cells = whole.flatMap((w) => sub.map((s) => ({ w, s })));
  const inCell = (cell: { w: string | null; s: string | null }) => (row: TrialRow) =>
    row.whole === cell.w && row.sub === cell.s;
  const missing = cells.filter((cell) => !rows.some(inCell(cell)));
  const full = missing.length === 0;
  const regressors = (w: string | null, s: string | null): number[] =>
    full
      ? cells.map((cell) => Number(cell.w === w && cell.s === s))
      : [
          1,
          ...whole.slice(1).map((level) => Number(level === w)),
          ...sub.slice(1).map((level) => Number(level === s)),
        ];
  const meanOf = (ws: readonly (string | null)[], ss: readonly (string | null)[]) =>
    average(ws.flatMap((w) => ss.map((s) => regressors(w, s))));
  const design = rows.map((row) => regressors(row.whole, row.sub));
  const kept = independentColumns(design);
  const told = estimableBy(design);
  const reduced = (weights: readonly number[]) => kept.map((k) => weights[k]!);
  const comparable = (means: readonly number[][]) =>
    setsOf([...means.keys()], (one, other) => told(subtract(means[one]!, means[other]!)));
  const against = (means: readonly number[][], sets: readonly (readonly number[])[]) =>
    sets.flatMap(([first, ...others]) => others.map((one) => reduced(subtract(means[one]!, means[first!]!))));

  const wholeMeans = whole.map((w) => meanOf([w], sub));
  const subMeans = sub.map((s) => meanOf(whole, [s]));
  const wholeSets = comparable(wholeMeans);
  const subSets = comparable(subMeans);
  const terms: TrialModel['terms'][number][] = [];
  const ofWhole = against(wholeMeans, wholeSets);
  const ofSub = against(subMeans, subSets);
  if (columns.whole !== null && ofWhole.length > 0)
    terms.push({ term: columns.whole, stratum: 'whole-plot', hypotheses: ofWhole });
  if (columns.sub !== null && ofSub.length > 0)
    terms.push({ term: columns.sub, stratum: 'sub-plot', hypotheses: ofSub });
  if (terms.length === 2 && full) {
    const hypotheses = whole.slice(1).flatMap((w) =>
      sub.slice(1).map((s) => {
        const here = subtract(regressors(w, s), regressors(w, sub[0]!));
        return reduced(subtract(here, subtract(regressors(whole[0]!, s), regressors(whole[0]!, sub[0]!))));
      }),
    );
    terms.push({ term: `${columns.whole} × ${columns.sub}`, stratum: 'sub-plot', hypotheses });
  }
  const marginal = (
    term: string,
    level: string,
    weights: readonly number[],
    set: number,
    own: readonly TrialRow[],
  ): Marginal => ({ term, level, weights: reduced(weights), told: told(weights), set, rows: own });
  const marginals = (
    term: string | null,
    levels: readonly (string | null)[],
    weights: readonly number[][],
    sets: readonly (readonly number[])[],
    of: 'whole' | 'sub',
  ) =>
    term === null
      ? []
      : levels.map((level, k) =>
          marginal(
            term,
            level!,
            weights[k]!,
            sets.findIndex((set) => set.includes(k)),
            rows.filter((row) => row[of] === level),
          ),
        );
  const ofCells =
    columns.whole !== null && columns.sub !== null && full
      ? cells.map((cell) =>
          marginal(
            `${columns.whole} × ${columns.sub}`,
            `${cell.w} × ${cell.s}`,
            regressors(cell.w, cell.s),
            0,
            rows.filter(inCell(cell)),
          ),
        )
      : [];
  return {
    design: design.map(reduced),
    terms,
    means: [
      ...marginals(columns.whole, whole, wholeMeans, wholeSets, 'whole'),
      ...marginals(columns.sub, sub, subMeans, subSets, 'sub'),
      ...ofCells,
    ],
    missingCells: missing.map((cell) => `${cell.w} × ${cell.s}`),
    apart: [
      ...(columns.whole !== null && wholeSets.length > 1
        ? [{ term: columns.whole, sets: wholeSets.map((set) => set.map((k) => whole[k]!)) }]
        : []),
      ...(columns.sub !== null && subSets.length > 1
        ? [{ term: columns.sub, sets: subSets.map((set) => set.map((k) => sub[k]!)) }]
        : []),
    ],
  };
}

/** The different names in the order in which they first come; `[null]` where the column is not there. */
function levelsOf(names: readonly (string | null)[]): (string | null)[] {
  return [...new Set(names)];
}

function average(rows: readonly number[][]): number[] {
  return rows[0]!.map((_, k) => rows.reduce((sum, row) => sum + row[k]!, 0) / rows.length);
}

function subtract(left: readonly number[], right: readonly number[]): number[] {
  return left.map((value, k) => value - right[k]!);
}
