import { describe, expect, test } from 'vitest';
import { squaredWeights, weightedKappa } from '../../src/science/statistics/weightedKappa.ts';
import { eachRow, near, publishedRows } from './rows.ts';

const rows = publishedRows('agreement.json');

interface Tables {
  readonly counts: number[][];
  readonly weights: number[][];
}

describe('weighted kappa, Cohen 1968; its error, Fleiss, Cohen & Everitt 1969', () => {
  eachRow(rows, /^kappa-/, 7, (row) => {
    const { counts, weights } = row.inputs as unknown as Tables;
    const expected = row.expected as { kappa: number; standardError?: number };
    const found = weightedKappa(counts, weights)!;
    near(row, found.kappa, expected.kappa);
    if (expected.standardError !== undefined) near(row, found.standardError, expected.standardError);
    // Both readers may change places, when the weights do too.
    const turned = (table: number[][]) => table[0]!.map((_, j) => table.map((line) => line[j]!));
    near(row, weightedKappa(turned(counts), turned(weights))!.kappa, found.kappa, 1e-12);
  });
  test('what can tell nothing is null', () => {
    const none = [
      [0, 0],
      [0, 0],
    ];
    expect(weightedKappa(none, squaredWeights(2))).toBeNull();
    const allAlike = [
      [9, 0],
      [0, 0],
    ];
    expect(weightedKappa(allAlike, squaredWeights(2))).toBeNull();
  });
});
