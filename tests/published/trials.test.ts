import { describe, expect, test } from 'vitest';
import type { TrialColumns, TrialRow } from '../../src/records/trial.ts';
import { studentTail } from '../../src/science/statistics/distributions.ts';
import {
  allWithinOfControl,
  passingBound,
  studentizedRangeBelow,
} from '../../src/science/statistics/manyComparisons.ts';
import { analyseTrial } from '../../src/studio/trials/analyseTrial.ts';
import { eachRow, near, publishedRows } from './rows.ts';

const rows = publishedRows('trials.json');
/** The exact column of the range table, by numerical integration there and here. */
const exactRange = 1e-5;

function analysed(
  patches: readonly TrialRow[],
  columns: Partial<TrialColumns> & { readonly blocks: readonly string[] },
) {
  const all: TrialColumns = { response: 'read', whole: null, sub: null, strip: null, ...columns };
  return analyseTrial({ rows: patches, unreadLines: [] }, all, null);
}

function patch(response: number, block: string, whole: string | null, sub: string | null): TrialRow {
  return { response, blocks: [block], whole, sub, strip: null };
}

describe('studentized range', () => {
  eachRow(rows, /^tukey-q-/, 9, (row) => {
    const { k, df, alpha } = row.inputs as { k: number; df: number | 'infinite'; alpha: number };
    const freedom = df === 'infinite' ? Infinity : df;
    const { printed, exact } = row.expected as { printed: number; exact: number };
    const found = passingBound((range) => studentizedRangeBelow(range, k, freedom), 1 - alpha);
    near(row, found, printed);
    near(row, found, exact, exactRange);
  });
});

describe('several differences to one control', () => {
  eachRow(rows, /^dunnett-/, 2, (row) => {
    const { group_sizes, control_size, df, statistics } = row.inputs as {
      group_sizes: number[];
      control_size: number;
      df: number;
      statistics: number[];
    };
    const ties = group_sizes.map((size) => Math.sqrt(size / (size + control_size)));
    const { p } = row.expected as { p: number[] };
    for (const [i, chance] of p.entries())
      near(row, 1 - allWithinOfControl(statistics[i]!, ties, df), chance);
  });

  test('one difference alone is Student’s t; almost untied they are independent', () => {
    for (const score of [0.5, 2, 4]) {
      for (const freedom of [3, 12, Infinity]) {
        const one = 1 - 2 * studentTail(score, freedom);
        expect(allWithinOfControl(score, [0.6], freedom)).toBeCloseTo(one, 8);
      }
      const inside = 1 - 2 * studentTail(score, Infinity);
      expect(allWithinOfControl(score, [1e-6, 1e-6, 1e-6], Infinity)).toBeCloseTo(inside ** 3, 8);
    }
    expect(allWithinOfControl(0, [0.5], 5)).toBe(0);
    expect(allWithinOfControl(1, [1], 5)).toBeNaN();
    expect(allWithinOfControl(1, [0.5], 0)).toBeNaN();
  });
});

describe('all pairs of levels', () => {
  eachRow(rows, /^tukey-hsd-warpbreaks$/, 1, (row) => {
    const { breaks, wool, tension } = row.inputs as Record<'wool' | 'tension', string[]> & {
      breaks: number[];
    };
    const { differences } = analysed(
      breaks.map((read, i) => patch(read, wool[i]!, null, tension[i]!)),
      { blocks: ['wool'], sub: 'tension' },
    );
    const expected = row.expected as Record<string, Record<'diff' | 'lower' | 'upper' | 'p_adj', number>>;
    for (const [pair, wanted] of Object.entries(expected)) {
      const [left, right] = pair.split('-');
      const found = differences.find(
        (one) => [left, right].includes(one.level) && [left, right].includes(one.against),
      )!;
      const turn = found.level === left ? 1 : -1;
      near(row, turn * found.value, wanted.diff);
      near(row, turn > 0 ? found.low : -found.high, wanted.lower);
      near(row, turn > 0 ? found.high : -found.low, wanted.upper);
      near(row, found.p, wanted.p_adj);
      expect(found.correction).toBe('Tukey');
    }
  });
});

describe('blocks', () => {
  eachRow(rows, /^rcbd-penicillin$/, 1, (row) => {
    const { blocks, treatments, yield_by_block } = row.inputs as {
      blocks: string[];
      treatments: string[];
      yield_by_block: number[][];
    };
    const expected = row.expected as {
      treatment: { df: number; f: number; p: number };
      residual: { df: number; ms: number };
      treatment_means: number[];
      se_difference_of_two_treatment_means: number;
    };
    const answer = analysed(
      yield_by_block.flatMap((line, b) =>
        line.map((read, t) => patch(read, blocks[b]!, null, treatments[t]!)),
      ),
      { blocks: ['blend'], sub: 'treatment' },
    );
    const [treatment] = answer.anova;
    expect(treatment!.df).toBe(expected.treatment.df);
    near(row, treatment!.denDf!, expected.residual.df);
    near(row, treatment!.F!, expected.treatment.f);
    near(row, treatment!.p!, expected.treatment.p);
    near(row, answer.components.at(-1)!.variance, expected.residual.ms);
    near(row, answer.differences[0]!.standardError, expected.se_difference_of_two_treatment_means);
    for (const [i, mean] of expected.treatment_means.entries()) near(row, answer.estimates[i]!.value, mean);
  });
});

interface SplitPlot {
  readonly whole_plot: { readonly variety: Line; readonly error_a: { readonly df: number } };
  readonly sub_plot: {
    readonly nitrogen: Line;
    readonly nitrogen_x_variety: Line;
    readonly error_b: { readonly df: number; readonly ms: number };
  };
  readonly variety_means: Readonly<Record<string, number>>;
  readonly nitrogen_means: Readonly<Record<string, number>>;
  readonly sed: Readonly<Record<'variety' | 'nitrogen', number>>;
}
type Line = Readonly<Record<'df' | 'f' | 'p', number>>;

const oats = rows.find((row) => row.id === 'splitplot-oats')!;
const oatPatches = (oats.inputs.rows as [string, string, number, number][]).map(
  ([block, variety, nitrogen, read]) => patch(read, block, variety, nitrogen.toFixed(1)),
);
const oatColumns = { blocks: ['block'], whole: 'variety', sub: 'nitrogen' };

const searched = [215.14007561, 102.32685875, 148.06480143];

describe('split plot', () => {
  eachRow(rows, /^splitplot-oats$/, 1, (row) => {
    const expected = row.expected as SplitPlot;
    const answer = analysed(oatPatches, oatColumns);
    const wanted = [
      [expected.whole_plot.variety, 'whole-plot', expected.whole_plot.error_a.df],
      [expected.sub_plot.nitrogen, 'sub-plot', expected.sub_plot.error_b.df],
      [expected.sub_plot.nitrogen_x_variety, 'sub-plot', expected.sub_plot.error_b.df],
    ] as const;
    expect(answer.anova).toHaveLength(wanted.length);
    for (const [i, [line, stratum, denDf]] of wanted.entries()) {
      const found = answer.anova[i]!;
      expect([found.stratum, found.df]).toEqual([stratum, line.df]);
      near(row, found.denDf!, denDf);
      near(row, found.F!, line.f);
      near(row, found.p!, line.p);
    }
    near(row, answer.components.at(-1)!.variance, expected.sub_plot.error_b.ms);
    for (const term of ['variety', 'nitrogen'] as const) {
      const means = expected[`${term}_means`];
      for (const estimate of answer.estimates.filter((one) => one.term === term))
        near(row, estimate.value, means[estimate.level]!);
      for (const difference of answer.differences.filter((one) => one.term === term))
        near(row, difference.standardError, expected.sed[term]);
    }
    expect(answer.warnings).toEqual([]);
  });

  // Restricted likelihood of the same table without nine of its patches, found by a search in Python (scipy 1.17.1,
  // Nelder and Mead over a dense covariance): 215.1401, 102.3269, 148.0648. The search stops within 1e-4 of the summit.
  test('a table with holes gives the variances of the greatest restricted likelihood', () => {
    const holes = [4, 12, 15, 21, 33, 38, 50, 55, 64];
    const answer = analysed(
      oatPatches.filter((_, i) => !holes.includes(i)),
      oatColumns,
    );
    expect(answer.components.map((one) => one.of)).toEqual(['block', 'strip', 'patch']);
    for (const [i, variance] of searched.entries())
      expect(answer.components[i]!.variance).toBeCloseTo(variance, 3);
    expect(answer.anova[0]!.denDf).toBeLessThanOrEqual(10);
    expect(answer.differences.every((one) => one.correction === 'Bonferroni')).toBe(true);
  });
});
