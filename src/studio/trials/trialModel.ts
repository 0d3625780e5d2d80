import type { Stratum, TrialColumns, TrialRow } from '../../records/trial.ts';

/** A sum of coefficients that means something to a printer. */
interface Marginal {
  readonly term: string;
  readonly level: string;
  readonly weights: readonly number[];
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
}

/**
 * The treatments' part of a trial's model: one mean for every combination where each was tried, so that a level's mean
 * counts every level of the other treatment alike; else the sum of both treatments' effects.
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
  const against = (levels: readonly number[][]) => levels.slice(1).map((row) => subtract(row, levels[0]!));

  const wholeMeans = whole.map((w) => meanOf([w], sub));
  const subMeans = sub.map((s) => meanOf(whole, [s]));
  const terms: TrialModel['terms'][number][] = [];
  if (columns.whole !== null && whole.length > 1)
    terms.push({ term: columns.whole, stratum: 'whole-plot', hypotheses: against(wholeMeans) });
  if (columns.sub !== null && sub.length > 1)
    terms.push({ term: columns.sub, stratum: 'sub-plot', hypotheses: against(subMeans) });
  if (terms.length === 2 && full) {
    const hypotheses = whole.slice(1).flatMap((w) =>
      sub.slice(1).map((s) => {
        const here = subtract(regressors(w, s), regressors(w, sub[0]!));
        return subtract(here, subtract(regressors(whole[0]!, s), regressors(whole[0]!, sub[0]!)));
      }),
    );
    terms.push({ term: `${columns.whole} × ${columns.sub}`, stratum: 'sub-plot', hypotheses });
  }
  const means: Marginal[] = [];
  if (columns.whole !== null)
    for (const [i, level] of whole.entries())
      means.push(
        marginal(
          columns.whole,
          level!,
          wholeMeans[i]!,
          rows.filter((row) => row.whole === level),
        ),
      );
  if (columns.sub !== null)
    for (const [i, level] of sub.entries())
      means.push(
        marginal(
          columns.sub,
          level!,
          subMeans[i]!,
          rows.filter((row) => row.sub === level),
        ),
      );
  if (columns.whole !== null && columns.sub !== null && full)
    for (const cell of cells)
      means.push(
        marginal(
          `${columns.whole} × ${columns.sub}`,
          `${cell.w} × ${cell.s}`,
          regressors(cell.w, cell.s),
          rows.filter(inCell(cell)),
        ),
      );
  return {
    design: rows.map((row) => regressors(row.whole, row.sub)),
    terms,
    means,
    missingCells: missing.map((cell) => `${cell.w} × ${cell.s}`),
  };
}

function marginal(
  term: string,
  level: string,
  weights: readonly number[],
  rows: readonly TrialRow[],
): Marginal {
  return { term, level, weights, rows };
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
