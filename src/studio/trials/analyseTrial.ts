import type {
  AnovaLine,
  TrialAnalysis,
  TrialColumns,
  TrialDifference,
  TrialEstimate,
  TrialRow,
  TrialTable,
} from '../../records/trial.ts';
import { studentQuantile } from '../../science/statistics/distributions.ts';
import { contrastOf, jointTest } from '../../science/statistics/mixed/contrastTest.ts';
import { fitVarianceComponents, type MixedFit } from '../../science/statistics/mixed/varianceComponents.ts';
import { trialDifferences } from './trialDifferences.ts';
import { type TrialModel, trialModel } from './trialModel.ts';
import { type TrialStrata, trialStrata } from './trialStrata.ts';
import { fitWarnings, tableWarnings, unreadWarnings } from './trialWarnings.ts';

/**
 * Analyses a test stone's readings as a split-plot (or block, or row and column) experiment: variance components by
 * restricted maximum likelihood, every term against the scatter of its own stratum, denominators by Satterthwaite and never
 * more than the stratum holds. Balanced tables give the classical strata's F.
 * Yates, F. (1935), Supplement to the J. Royal Statistical Society 2, 181–247, doi 10.2307/2983638.
 * @param table at least one row; every column that `columns` names is filled.
 * @param control the level that others are compared with, where a treatment has one of that name; null: one called None or
 * control, where there is one, else all pairs.
 */
export function analyseTrial(
  { rows, unreadLines }: TrialTable,
  columns: TrialColumns,
  control: string | null,
): TrialAnalysis {
  const model = trialModel(rows, columns);
  const strata = trialStrata(rows, columns, model.design);
  const fit = fitVarianceComponents(
    model.design,
    rows.map((row) => row.response),
    strata.groupings.map((one) => one.grouping),
  );
  return {
    schema: 'stonetone/trial-analysis/1',
    columns,
    patches: rows.length,
    anova: anovaOf(model, strata, fit),
    estimates: estimatesOf(rows, model, strata, fit),
    differences: fit ? differencesOf(model, strata, fit, control) : [],
    components: fit
      ? [...strata.groupings.map((one) => one.of), 'patch'].map((of, k) => ({
          of,
          variance: fit.variances[k]!,
        }))
      : [],
    warnings: [
      ...unreadWarnings(unreadLines),
      ...tableWarnings(rows, columns, model, strata),
      ...fitWarnings(rows, strata, fit),
    ],
  };
}

/** Degrees of freedom of a term's own stratum. */
function stratumDf(stratum: AnovaLine['stratum'], strata: TrialStrata): number {
  return stratum === 'whole-plot' ? strata.wholePlotDf! : strata.subPlotDf;
}

function anovaOf(model: TrialModel, strata: TrialStrata, fit: MixedFit | null): AnovaLine[] {
  return model.terms.map(({ term, stratum, hypotheses }) => {
    const most = stratumDf(stratum, strata);
    if (!fit || most === 0) return { term, stratum, df: hypotheses.length, denDf: null, F: null, p: null };
    const { df, denDf, f, p } = jointTest(fit, hypotheses, most);
    return { term, stratum, df, denDf, F: f, p };
  });
}

function estimatesOf(
  rows: readonly TrialRow[],
  model: TrialModel,
  strata: TrialStrata,
  fit: MixedFit | null,
): TrialEstimate[] {
  const indexOf = new Map(rows.map((row, i) => [row, i]));
  const replicated = strata.wholePlotDf !== 0 && strata.groupings.length > 0;
  return model.means.map((mean) => {
    const units = new Set(mean.rows.map((row) => strata.units[indexOf.get(row)!])).size;
    const common = { term: mean.term, level: mean.level, patches: mean.rows.length, units };
    const plain = mean.rows.reduce((sum, row) => sum + row.response, 0) / mean.rows.length;
    if (!fit || !mean.told)
      return { ...common, value: plain, standardError: null, df: null, low: null, high: null };
    const { value, standardError, degreesOfFreedom: df } = contrastOf(fit, mean.weights);
    // Without a second strip or stone, how far another one would differ was never seen.
    const known = replicated || (strata.leftOut.length === 0 && strata.subPlotDf > 0);
    if (!known) return { ...common, value, standardError: null, df: null, low: null, high: null };
    const reach = studentQuantile(0.975, df) * standardError;
    return { ...common, value, standardError, df, low: value - reach, high: value + reach };
  });
}

function differencesOf(
  model: TrialModel,
  strata: TrialStrata,
  fit: MixedFit,
  control: string | null,
): TrialDifference[] {
  return model.terms.flatMap(({ term, stratum }) => {
    const most = stratumDf(stratum, strata);
    const levels = model.means.filter((mean) => mean.term === term);
    // Every pair of combinations is seldom asked for, and would widen every interval.
    if (most === 0 || term.includes(' × ')) return [];
    const sets = [...new Set(levels.map(({ set }) => set))]
      .map((set) => levels.filter((level) => level.set === set))
      .filter((set) => set.length > 1);
    return sets.flatMap((set) =>
      trialDifferences(fit, term, set, controlAmong(set, control), most, sets.length),
    );
  });
}

/** The level to compare with: the one that was named, else one that says of itself that nothing was done. */
function controlAmong(levels: readonly { readonly level: string }[], named: string | null): string | null {
  const found = levels.find(({ level }) =>
    named === null ? /^(none|control)$/i.test(level) : level === named,
  );
  return found?.level ?? null;
}
