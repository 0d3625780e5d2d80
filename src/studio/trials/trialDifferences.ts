import type { TrialDifference } from '../../records/trial.ts';
import { studentQuantile, studentTail } from '../../science/statistics/distributions.ts';
import {
  allWithinOfControl,
  passingBound,
  studentizedRangeBelow,
} from '../../science/statistics/manyComparisons.ts';
import {
  type Contrast,
  contrastCovariance,
  contrastOf,
} from '../../science/statistics/mixed/contrastTest.ts';
import type { MixedFit } from '../../science/statistics/mixed/varianceComponents.ts';

interface Level {
  readonly level: string;
  readonly weights: readonly number[];
}

interface Pair {
  readonly level: Level;
  readonly against: Level;
}

/** All differences of a treatment share this one chance of a false one. */
const falseClaims = 0.05;
/** Standard errors that differ by less than this are taken for equal: what rounding leaves. */
const alike = 1e-6;

/** Bounds found before: one takes some ten milliseconds, and tables of one layout ask for the same again and again. */
const knownBounds = new Map<string, number>();
const mostBounds = 500;

/**
 * Differences between the levels of one treatment, right for the whole family at once: to the control where there is one,
 * by Dunnett's bound, else all pairs by Tukey's; Bonferroni's, which is never too narrow, where the table is not balanced
 * enough for those.
 * @param levels at least two.
 * @param control the name of the control among them; null: none.
 * @param mostDf degrees of freedom of the stratum.
 * @param families how many such sets of levels the treatment falls into: they share its chance of a false claim evenly.
 */
export function trialDifferences(
  fit: MixedFit,
  term: string,
  levels: readonly Level[],
  control: string | null,
  mostDf: number,
  families = 1,
): TrialDifference[] {
  const base = levels.find((one) => one.level === control);
  const pairs: Pair[] = base
    ? levels.filter((one) => one !== base).map((one) => ({ level: one, against: base }))
    : levels.flatMap((against, i) => levels.slice(i + 1).map((one) => ({ level: one, against })));
  const rows = pairs.map((pair) => pair.level.weights.map((weight, k) => weight - pair.against.weights[k]!));
  const contrasts = rows.map((row) => contrastOf(fit, row, mostDf));
  const family = base ? 'to control' : 'all pairs';
  const rule = ruleOf(fit, rows, contrasts, levels.length, family, 1 - falseClaims / families);
  return pairs.map((pair, i) => {
    const { value, standardError, degreesOfFreedom: df } = contrasts[i]!;
    const bound = rule.boundOf(df);
    return {
      term,
      level: pair.level.level,
      against: pair.against.level,
      value,
      standardError,
      df,
      low: value - bound * standardError,
      high: value + bound * standardError,
      p: Math.min(1, Math.max(0, families * rule.chanceBeyond(Math.abs(value) / standardError, df))),
      family,
      correction: rule.correction,
    };
  });
}

interface FamilyRule {
  readonly correction: TrialDifference['correction'];
  readonly boundOf: (df: number) => number;
  readonly chanceBeyond: (score: number, df: number) => number;
}

function ruleOf(
  fit: MixedFit,
  rows: readonly number[][],
  contrasts: readonly Contrast[],
  levels: number,
  family: TrialDifference['family'],
  level: number,
): FamilyRule {
  const sizes = contrasts.map((contrast) => contrast.standardError);
  const even = Math.max(...sizes) - Math.min(...sizes) <= alike * Math.max(...sizes);
  if (family === 'all pairs' && even) {
    const within = (score: number, df: number) => studentizedRangeBelow(score * Math.SQRT2, levels, df);
    return familyRule('Tukey', within, level, levels);
  }
  if (family === 'to control' && even && tiedByHalf(fit, rows)) {
    const ties = rows.map(() => Math.SQRT1_2);
    return familyRule('Dunnett', (score, df) => allWithinOfControl(score, ties, df), level, levels);
  }
  return {
    correction: 'Bonferroni',
    boundOf: (df) => studentQuantile(1 - (1 - level) / 2 / rows.length, df),
    chanceBeyond: (score, df) => 2 * rows.length * studentTail(score, df),
  };
}

function familyRule(
  correction: FamilyRule['correction'],
  within: (score: number, df: number) => number,
  level: number,
  levels: number,
): FamilyRule {
  return {
    correction,
    boundOf(df) {
      const whole = Math.round(df * 1e6) / 1e6;
      const key = `${correction} ${levels} ${whole} ${level}`;
      const found = knownBounds.get(key) ?? passingBound((score) => within(score, whole), level);
      if (knownBounds.size >= mostBounds) knownBounds.clear();
      knownBounds.set(key, found);
      return found;
    },
    chanceBeyond: (score, df) => 1 - within(score, df),
  };
}

/** Do all differences share just the control's half of their variance? */
function tiedByHalf(fit: MixedFit, rows: readonly number[][]): boolean {
  return rows.every((row, i) =>
    rows.slice(i + 1).every((other) => {
      const shared = contrastCovariance(fit, row, other);
      return Math.abs(shared / contrastCovariance(fit, row, row) - 0.5) <= alike;
    }),
  );
}
