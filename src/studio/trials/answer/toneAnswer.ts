import type { TestFactor } from '../../../records/testStone.ts';
import type { FactorTest, LevelTone, TestStoneAnswer } from '../../../records/testStoneAnswer.ts';
import type { TrialDifference } from '../../../records/trial.ts';
import { studentQuantile } from '../../../science/statistics/distributions.ts';
import { contrastOf, jointTest } from '../../../science/statistics/mixed/contrastTest.ts';
import {
  fitVarianceComponents,
  type MixedFit,
} from '../../../science/statistics/mixed/varianceComponents.ts';
import { trialDifferences } from '../trialDifferences.ts';
import { type ToneModel, toneModel } from './toneModel.ts';
import { type ToneStrata, toneStrata } from './toneStrata.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { countUnits, trialUnits, unitOf } from './trialUnits.ts';

/** Patches whose tone was read, with that tone. */
export interface ToneRows {
  readonly of: TestStoneAnswer['toneOf'];
  readonly rows: readonly TrialPatchRow[];
  readonly tones: readonly number[];
}

type ToneAnswer = Pick<TestStoneAnswer, 'tones' | 'tests' | 'contrasts' | 'components'> & {
  readonly warnings: readonly string[];
};

/** How much was printed beyond what was drawn; where the drawing is not known of every patch, what was printed. */
export function toneRows(rows: readonly TrialPatchRow[]): ToneRows {
  const read = rows.filter(({ printed }) => printed !== null);
  const of = read.length > 0 && read.every(({ drawn }) => drawn !== null) ? 'change' : 'printed';
  return {
    of,
    rows: read,
    tones: read.map(({ printed, drawn }) => printed! - (of === 'change' ? drawn! : 0)),
  };
}

/**
 * Tones by a mixed model: every factor against the scatter of the unit that it was given to, by restricted maximum likelihood.
 * Factors to whose differences no cause can be assigned get means and no test.
 * @param blocked names of those. @param controlOf the level of a factor that others are compared with; null: all pairs.
 */
export function toneAnswer(
  { rows, tones }: ToneRows,
  factors: readonly TestFactor[],
  blocked: ReadonlySet<string>,
  controlOf: (factor: string) => string | null,
): ToneAnswer {
  const varied = factors.filter(({ name }) => new Set(rows.map((row) => row.levels[name])).size > 1);
  const free = varied.filter(({ name }) => !blocked.has(name));
  const plain = varied
    .filter(({ name }) => blocked.has(name))
    .flatMap((factor) => plainMeans(rows, tones, factor));
  if (rows.length === 0) return { tones: [], tests: [], contrasts: [], components: [], warnings: [] };
  const model = toneModel(rows, free);
  const strata = toneStrata(rows, model.design);
  const fit = fitVarianceComponents(
    model.design,
    tones,
    strata.groupings.map(({ grouping }) => grouping),
  );
  if (!fit)
    return {
      tones: [...free.flatMap((factor) => plainMeans(rows, tones, factor)), ...plain],
      tests: [],
      contrasts: [],
      components: [],
      warnings: [
        'Tones are too few, or too much alike, to tell treatments from scatter: means are given without intervals.',
      ],
    };
  return {
    tones: [...free.flatMap((factor) => fittedMeans(rows, factor, model, strata, fit)), ...plain],
    tests: [
      ...free.map((factor) => testOf(rows, factor, model, strata, fit)),
      ...togetherTest(rows, free, model, strata, fit),
    ],
    contrasts: free.flatMap((factor) =>
      contrastsOf(rows, factor, model, strata, fit, controlOf(factor.name)),
    ),
    components: [...strata.groupings.map(({ of }) => of), 'patch'].map((of, k) => ({
      of,
      variance: fit.variances[k]!,
    })),
    warnings: [],
  };
}

function plainMeans(
  rows: readonly TrialPatchRow[],
  tones: readonly number[],
  factor: TestFactor,
): LevelTone[] {
  const unit = unitOf(factor, rows);
  return [...new Set(rows.map((row) => row.levels[factor.name]!))].map((level) => {
    const own = rows.flatMap((row, i) =>
      row.levels[factor.name] === level ? [{ row, tone: tones[i]! }] : [],
    );
    return {
      factor: factor.name,
      level,
      value: own.reduce((sum, { tone }) => sum + tone, 0) / own.length,
      low: null,
      high: null,
      patches: own.length,
      units: countUnits(
        own.map(({ row }) => row),
        unit,
      ),
    };
  });
}

function levelsOf(model: ToneModel, factor: TestFactor) {
  return model.levels.find((one) => one.factor === factor.name)!.levels;
}

function fittedMeans(
  rows: readonly TrialPatchRow[],
  factor: TestFactor,
  model: ToneModel,
  strata: ToneStrata,
  fit: MixedFit,
): LevelTone[] {
  const unit = unitOf(factor, rows);
  // A mean is one of another such unit on another stone: it scatters as far as the coarsest that was repeated.
  const known = trialUnits
    .slice(0, trialUnits.indexOf(unit) + 1)
    .every((of) => strata.df[of] > 0 || single(rows, of));
  return levelsOf(model, factor).map(({ level, weights }) => {
    const own = rows.filter((row) => row.levels[factor.name] === level);
    const { value, standardError, degreesOfFreedom } = contrastOf(fit, weights);
    const reach = studentQuantile(0.975, degreesOfFreedom) * standardError;
    return {
      factor: factor.name,
      level,
      value,
      low: known ? value - reach : null,
      high: known ? value + reach : null,
      patches: own.length,
      units: countUnits(own, unit),
    };
  });
}

/** Only one unit of that size: nothing is claimed of another. */
function single(rows: readonly TrialPatchRow[], of: (typeof trialUnits)[number]): boolean {
  return countUnits(rows, of) === 1;
}

function testOf(
  rows: readonly TrialPatchRow[],
  factor: TestFactor,
  model: ToneModel,
  strata: ToneStrata,
  fit: MixedFit,
): FactorTest {
  const [first, ...others] = levelsOf(model, factor);
  const hypotheses = others.map(({ weights }) => weights.map((weight, k) => weight - first!.weights[k]!));
  return jointly(factor.name, unitOf(factor, rows), hypotheses, strata, fit);
}

function togetherTest(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  { together }: ToneModel,
  strata: ToneStrata,
  fit: MixedFit,
): FactorTest[] {
  if (!together) return [];
  const units = factors.map((factor) => trialUnits.indexOf(unitOf(factor, rows)));
  const name = factors.map((factor) => factor.name).join(' × ');
  return [jointly(name, trialUnits[Math.max(...units)]!, together, strata, fit)];
}

function jointly(
  factor: string,
  unit: FactorTest['unit'],
  hypotheses: readonly (readonly number[])[],
  strata: ToneStrata,
  fit: MixedFit,
): FactorTest {
  const most = strata.df[unit];
  if (most <= 0) return { factor, unit, df: hypotheses.length, denDf: null, f: null, p: null };
  const { df, denDf, f, p } = jointTest(fit, hypotheses, most);
  return { factor, unit, df, denDf, f, p };
}

function contrastsOf(
  rows: readonly TrialPatchRow[],
  factor: TestFactor,
  model: ToneModel,
  strata: ToneStrata,
  fit: MixedFit,
  control: string | null,
): TrialDifference[] {
  const most = strata.df[unitOf(factor, rows)];
  return most > 0 ? trialDifferences(fit, factor.name, levelsOf(model, factor), control, most) : [];
}
