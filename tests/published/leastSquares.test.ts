import { readFileSync } from 'node:fs';
import { describe, expect } from 'vitest';
import { inverseCrossProduct, leastSquares } from '../../src/science/statistics/leastSquares.ts';
import { eachRow, publishedRows } from './rows.ts';

const rows = publishedRows('nist_strd_certified.json');

/** Columns y, x1, x2 … of a data set of NIST/ITL's Statistical Reference Datasets. */
function observations(file: string): { targets: number[]; regressors: number[][] } {
  const lines = readFileSync(new URL(`data/${file}`, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1);
  const numbers = lines.map((line) => line.split(',').map(Number));
  return { targets: numbers.map(([y]) => y!), regressors: numbers.map(([, ...x]) => [1, ...x]) };
}

describe('least squares on certified sets, Longley’s near-collinear one too', () => {
  eachRow(rows, /^nist-strd-(norris|longley)$/, 2, (row) => {
    const { targets, regressors } = observations(row.inputs.data as string);
    const certified = row.expected as { parameters: number[]; parameter_sd: number[]; residual_ss: number };
    const found = leastSquares(regressors, targets, null)!;
    expect(found).toHaveLength(certified.parameters.length);
    for (const [i, value] of certified.parameters.entries())
      expect(Math.abs(found[i]! / value - 1), `parameter ${i}`).toBeLessThan(row.tolerance.relative!);
    const residuals = regressors.map(
      (x, i) => targets[i]! - x.reduce((sum, value, k) => sum + value * found[k]!, 0),
    );
    const left = residuals.reduce((sum, value) => sum + value * value, 0);
    expect(Math.abs(left / certified.residual_ss - 1)).toBeLessThan(row.tolerance.relative!);
    const variance = left / (targets.length - found.length);
    const spread = inverseCrossProduct(regressors)!;
    for (const [i, deviation] of certified.parameter_sd.entries())
      expect(Math.abs(Math.sqrt(variance * spread[i]![i]!) / deviation - 1)).toBeLessThan(
        row.tolerance.relative!,
      );
    // Weights that are all alike change nothing.
    const weighted = leastSquares(
      regressors,
      targets,
      targets.map(() => 4),
    )!;
    for (const [i, value] of found.entries()) expect(weighted[i]! / value).toBeCloseTo(1, 6);
  });
});
