import { normalQuantile } from './distributions.ts';

/** Agreement of two readers beyond chance, with its 95 % interval. */
export interface KappaAnswer {
  /** −1..1; 1: always agreed, 0: as often as by chance. */
  readonly kappa: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Agreement of two readers over categories, near misses counted by weight.
 * Cohen, J. (1968), Psychological Bulletin 70, 213–220, doi 10.1037/h0026256; its standard error by Fleiss, J. L., Cohen, J. &
 * Everitt, B. S. (1969), Psychological Bulletin 72, 323–327, doi 10.1037/h0028106. The interval is for many patches: with
 * fewer than some thirty it is rough.
 * @param counts square; counts[i][j]: patches that the first put in category i and the second in j, none below 0.
 * @param weights square, of agreement: 1 where both say the same, less for others; need not be symmetric.
 * @returns null where no patch was read, or chance alone would agree on everything.
 */
export function weightedKappa(
  counts: readonly (readonly number[])[],
  weights: readonly (readonly number[])[],
): KappaAnswer | null {
  const total = counts.flat().reduce((sum, count) => sum + count, 0);
  if (!(total > 0)) return null;
  const shares = counts.map((row) => row.map((count) => count / total));
  const size = shares.length;
  const indices = Array.from({ length: size }, (_, i) => i);
  const sumOver = (value: (i: number, j: number) => number) =>
    indices.reduce((sum, i) => sum + indices.reduce((inner, j) => inner + value(i, j), 0), 0);
  const first = indices.map((i) => indices.reduce((sum, j) => sum + shares[i]![j]!, 0));
  const second = indices.map((j) => indices.reduce((sum, i) => sum + shares[i]![j]!, 0));
  const seen = sumOver((i, j) => weights[i]![j]! * shares[i]![j]!);
  const chance = sumOver((i, j) => weights[i]![j]! * first[i]! * second[j]!);
  if (chance >= 1) return null;
  const ofFirst = indices.map((i) => indices.reduce((sum, j) => sum + weights[i]![j]! * second[j]!, 0));
  const ofSecond = indices.map((j) => indices.reduce((sum, i) => sum + weights[i]![j]! * first[i]!, 0));
  const squares = sumOver(
    (i, j) =>
      shares[i]![j]! * (weights[i]![j]! * (1 - chance) - (ofFirst[i]! + ofSecond[j]!) * (1 - seen)) ** 2,
  );
  const variance = (squares - (seen * chance - 2 * chance + seen) ** 2) / (total * (1 - chance) ** 4);
  const kappa = (seen - chance) / (1 - chance);
  const standardError = Math.sqrt(Math.max(0, variance));
  const reach = normalQuantile(0.975) * standardError;
  return { kappa, standardError, low: Math.max(-1, kappa - reach), high: Math.min(1, kappa + reach) };
}

/**
 * Weights that count a miss by the square of the steps between, 1 on the diagonal and 0 at the far corners.
 * Fleiss, J. L. & Cohen, J. (1973), Educational and Psychological Measurement 33, 613–619, doi 10.1177/001316447303300309.
 * @param categories ordered, at least 2.
 */
export function squaredWeights(categories: number): number[][] {
  return Array.from({ length: categories }, (_, i) =>
    Array.from({ length: categories }, (_, j) => 1 - ((i - j) / (categories - 1)) ** 2),
  );
}
