import type { TestFactor } from '../../../records/testStone.ts';
import type { PatchResidual, PositionEffect } from '../../../records/testStoneAnswer.ts';
import { CholeskyDecomposition, Matrix } from '../../../science/algebra/denseMatrices.ts';
import { normalQuantile, studentQuantile } from '../../../science/statistics/distributions.ts';
import { contrastOf } from '../../../science/statistics/mixed/contrastTest.ts';
import { rankOf } from '../../../science/statistics/mixed/rankOf.ts';
import { fitVarianceComponents } from '../../../science/statistics/mixed/varianceComponents.ts';
import type { ToneRows } from './toneAnswer.ts';
import { toneModel } from './toneModel.ts';
import { toneStrata } from './toneStrata.ts';
import { trialUnits } from './trialUnits.ts';

const axes = [
  { along: 'left to right', of: 0 },
  { along: 'head to tail', of: 1 },
] as const;

/**
 * How tones run across and along the stone beside what treatments do: a straight slope in the mixed model, per 100 mm; none
 * where places and treatments can't be told apart.
 */
export function positionEffects({ rows, tones }: ToneRows, factors: readonly TestFactor[]): PositionEffect[] {
  if (rows.length < 4) return [];
  const { design } = toneModel(rows, factors);
  return axes.flatMap(({ along, of }): PositionEffect[] => {
    const placed = design.map((row, i) => [...row, (rows[i]!.centreMm[of] - rows[i]!.sizeMm[of] / 2) / 100]);
    if (rankOf(placed) < placed[0]!.length || placed.length <= placed[0]!.length + 1) return [];
    const { groupings } = toneStrata(rows, placed);
    const fit = fitVarianceComponents(
      placed,
      tones,
      groupings.map(({ grouping }) => grouping),
    );
    if (!fit) return [];
    const { value, standardError, degreesOfFreedom } = contrastOf(
      fit,
      placed[0]!.map((_, k) => Number(k === placed[0]!.length - 1)),
    );
    const reach =
      studentQuantile(0.975, Math.min(degreesOfFreedom, placed.length - placed[0]!.length)) * standardError;
    return [{ along, per100Mm: value, low: value - reach, high: value + reach }];
  });
}

/** Keeps a singular sum of squares solvable; far below what any tone is read to. */
const ridge = 1e-9;

/**
 * What is left of every patch's tone once treatments, stones and strips are taken out by least squares, with the score that a
 * normal scatter would have at its rank (Blom, G. 1958, Statistical Estimates and Transformed Beta-Variables: (i − 3/8)/(n + 1/4)).
 * Empty where nothing would be left.
 */
export function toneResiduals({ rows, tones }: ToneRows, factors: readonly TestFactor[]): PatchResidual[] {
  if (rows.length < 4) return [];
  const { design } = toneModel(rows, factors);
  const groups = trialUnits.slice(0, 2).map((size) => [...new Set(rows.map((row) => row.units[size]))]);
  // Strips as many as patches would take all there is.
  const used = groups.filter((names) => names.length > 1 && names.length < rows.length / 1.5);
  const full = design.map((row, i) => [
    ...row,
    ...used.flatMap((names) => names.map((name) => Number(Object.values(rows[i]!.units).includes(name)))),
  ]);
  if (rankOf(full) >= rows.length) return [];
  const x = new Matrix(full);
  const cross = x.transpose().mmul(x).add(Matrix.eye(x.columns).mul(ridge));
  const weights = new CholeskyDecomposition(cross).solve(x.transpose().mmul(Matrix.columnVector([...tones])));
  const fitted = x.mmul(weights).to1DArray();
  const left = tones.map((tone, i) => tone - fitted[i]!);
  const ranks = left.map((_, i) => i).toSorted((a, b) => left[a]! - left[b]!);
  const rankAt = new Map(ranks.map((index, rank) => [index, rank + 1]));
  return rows.map((row, i) => ({
    stone: row.stone,
    patch: row.name,
    centreMm: row.centreMm,
    fitted: fitted[i]!,
    residual: left[i]!,
    expected: normalQuantile((rankAt.get(i)! - 0.375) / (rows.length + 0.25)),
  }));
}
