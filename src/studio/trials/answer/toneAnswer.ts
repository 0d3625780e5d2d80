import type { TestFactor } from '../../../records/testStone.ts';
import type { FactorTest, LevelTone, TestStoneAnswer } from '../../../records/testStoneAnswer.ts';
import type { TrialDifference } from '../../../records/trial.ts';
import { studentQuantile } from '../../../science/statistics/distributions.ts';
import { contrastOf, jointTest } from '../../../science/statistics/mixed/contrastTest.ts';
import {
  fitVarianceComponents,
  type MixedFit,
} from '../../../science/statistics/mixed/varianceComponents.ts';
import type { StandingSets } from '../audit/standingSets.ts';
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
 * Only levels that can be compared are; means that can't be told free of another treatment carry no interval.
 * @param factors of more than one level, those that no unit repeats left out. @param standing what can be compared.
 * @param plain factors beside the model: they get means and no test.
 * @param controlOf the level of a factor that others are compared with; null: all pairs.
 */
export function toneAnswer(
  { rows, tones }: ToneRows,
  factors: readonly TestFactor[],
  plain: readonly TestFactor[],
  standing: StandingSets,
  controlOf: (factor: string) => string | null,
): ToneAnswer {
  if (rows.length === 0) return { tones: [], tests: [], contrasts: [], components: [], warnings: [] };
  const plainOf = (some: readonly TestFactor[]) => some.flatMap((factor) => plainMeans(rows, tones, factor));
  const model = toneModel(rows, factors);
  const strata = toneStrata(rows, model.design);
  const fit = fitVarianceComponents(
    model.design,
    tones,
    strata.groupings.map(({ grouping }) => grouping),
  );
  if (!fit)
    return {
      tones: plainOf([...factors, ...plain]),
      tests: [],
      contrasts: [],
      components: [],
      warnings: [
        'Tones are too few, or too much alike, to tell what was tried from scatter: means are given without a range.',
      ],
    };
  const fitted: Fitted = { rows, model, strata, fit, standing };
  return {
    tones: [...factors.flatMap((factor) => fittedMeans(fitted, tones, factor)), ...plainOf(plain)],
    tests: [...factors.flatMap((factor) => testOf(fitted, factor)), ...togetherTest(fitted, factors)],
    contrasts: factors.flatMap((factor) => contrastsOf(fitted, factor, controlOf(factor.name))),
    components: [...strata.groupings.map(({ of }) => of), 'patch'].map((of, k) => ({
      of,
      variance: fit.variances[k]!,
    })),
    warnings: [],
  };
}

interface Fitted {
  readonly rows: readonly TrialPatchRow[];
  readonly model: ToneModel;
  readonly strata: ToneStrata;
  readonly fit: MixedFit;
  readonly standing: StandingSets;
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

/** Levels of a factor that can be compared, two at least in each set. */
function comparable({ model, standing }: Fitted, factor: TestFactor) {
  const levels = levelsOf(model, factor);
  return (standing.get(factor.name) ?? [])
    .filter((set) => set.length > 1)
    .map((set) => levels.filter(({ level }) => set.includes(level)));
}

function fittedMeans(
  { rows, model, strata, fit }: Fitted,
  tones: readonly number[],
  factor: TestFactor,
): LevelTone[] {
  const unit = unitOf(factor, rows);
  // A mean is one of another such unit on another stone: it scatters as far as the coarsest that was repeated.
  const known = trialUnits
    .slice(0, trialUnits.indexOf(unit) + 1)
    .every((of) => strata.df[of] > 0 || single(rows, of));
  const plain = plainMeans(rows, tones, factor);
  return levelsOf(model, factor).map(({ level, mean }): LevelTone => {
    const found = plain.find((one) => one.level === level)!;
    if (mean === null) return found;
    const { value, standardError, degreesOfFreedom } = contrastOf(fit, mean);
    const reach = studentQuantile(0.975, degreesOfFreedom) * standardError;
    return { ...found, value, low: known ? value - reach : null, high: known ? value + reach : null };
  });
}

/** Only one unit of that size: nothing is claimed of another. */
function single(rows: readonly TrialPatchRow[], of: (typeof trialUnits)[number]): boolean {
  return countUnits(rows, of) === 1;
}

function testOf(fitted: Fitted, factor: TestFactor): FactorTest[] {
  const hypotheses = comparable(fitted, factor).flatMap(([first, ...others]) =>
    others.map(({ weights }) => weights.map((weight, k) => weight - first!.weights[k]!)),
  );
  return hypotheses.length === 0
    ? []
    : [jointly(fitted, factor.name, unitOf(factor, fitted.rows), hypotheses)];
}

/** Asked only where every level of both can be compared. */
function togetherTest(fitted: Fitted, factors: readonly TestFactor[]): FactorTest[] {
  const { rows, model, standing } = fitted;
  if (!model.together || factors.some(({ name }) => standing.get(name)?.length !== 1)) return [];
  const units = factors.map((factor) => trialUnits.indexOf(unitOf(factor, rows)));
  const [one, other] = factors;
  const tested = jointly(fitted, one!.name, trialUnits[Math.max(...units)]!, model.together);
  return [{ ...tested, under: other!.name }];
}

function jointly(
  { strata, fit }: Fitted,
  factor: string,
  unit: FactorTest['unit'],
  hypotheses: readonly (readonly number[])[],
): FactorTest {
  const most = strata.df[unit];
  if (most <= 0) return { factor, unit, df: hypotheses.length, denDf: null, f: null, p: null };
  const { df, denDf, f, p } = jointTest(fit, hypotheses, most);
  return { factor, unit, df, denDf, f, p };
}

function contrastsOf(fitted: Fitted, factor: TestFactor, control: string | null): TrialDifference[] {
  const { rows, strata, fit } = fitted;
  const most = strata.df[unitOf(factor, rows)];
  if (most <= 0) return [];
  const sets = comparable(fitted, factor);
  return sets.flatMap((set) => trialDifferences(fit, factor.name, set, control, most, sets.length));
}
