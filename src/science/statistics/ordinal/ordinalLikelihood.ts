/** The penalised log likelihood at one place, with its slope and its curvature turned positive. */
export interface OrdinalPoint {
  readonly logLikelihood: number;
  readonly penalised: number;
  readonly slope: readonly number[];
  readonly information: readonly (readonly number[])[];
}

interface OrdinalData {
  readonly rows: readonly (readonly number[])[];
  readonly categories: readonly number[];
  readonly weights: readonly number[];
  readonly penalty: readonly number[];
  /** How many: one fewer than categories. */
  readonly thresholds: number;
}

/**
 * Log likelihood of ordered readings under proportional odds less the ridge ½·Σ penalty·β², with its exact derivatives.
 * McCullagh (1980), doi 10.1111/j.2517-6161.1980.tb01109.x; the derivatives follow from it.
 * @param place thresholds, then coefficients.
 * @returns null where the thresholds don't rise, or a reading would be impossible.
 */
export function ordinalLikelihood(data: OrdinalData, place: readonly number[]): OrdinalPoint | null {
  const { rows, categories, weights, penalty, thresholds } = data;
  const cuts = place.slice(0, thresholds);
  const effects = place.slice(thresholds);
  if (cuts.some((cut, k) => k > 0 && cut <= cuts[k - 1]!)) return null;
  const slope = place.map(() => 0);
  const information = place.map(() => place.map(() => 0));
  let logLikelihood = 0;
  for (const [i, row] of rows.entries()) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    const shift = row.reduce((sum, value, k) => sum + value * effects[k]!, 0);
    const category = categories[i]!;
    const upper = edge(category < thresholds ? cuts[category]! - shift : Number.POSITIVE_INFINITY);
    const lower = edge(category > 0 ? cuts[category - 1]! - shift : Number.NEGATIVE_INFINITY);
    // The difference of two near 1 keeps its digits as that of their complements.
    const chance = lower.below > 0.5 ? lower.above - upper.above : upper.below - lower.below;
    if (!(chance > 0)) return null;
    logLikelihood += weight * Math.log(chance);
    // Where each edge moves by a parameter: +1 for its own threshold, −x for an effect.
    const moves: [index: number, upper: number, lower: number][] = [];
    if (category < thresholds) moves.push([category, 1, 0]);
    if (category > 0) moves.push([category - 1, 0, 1]);
    for (const [k, value] of row.entries()) if (value !== 0) moves.push([thresholds + k, -value, -value]);
    const first = moves.map(([, up, low]) => (up * upper.density - low * lower.density) / chance);
    for (const [a, [index, up, low]] of moves.entries()) {
      slope[index]! += weight * first[a]!;
      for (const [b, [other, otherUp, otherLow]] of moves.entries()) {
        const bend = (up * otherUp * upper.bend - low * otherLow * lower.bend) / chance;
        information[index]![other]! -= weight * (bend - first[a]! * first[b]!);
      }
    }
  }
  let ridge = 0;
  for (const [k, effect] of effects.entries()) {
    ridge += (penalty[k]! * effect * effect) / 2;
    slope[thresholds + k]! -= penalty[k]! * effect;
    information[thresholds + k]![thresholds + k]! += penalty[k]!;
  }
  return { logLikelihood, penalised: logLikelihood - ridge, slope, information };
}

/** The logistic distribution at one edge of a category: below, above, density and its derivative. */
function edge(at: number) {
  if (at === Number.POSITIVE_INFINITY) return { below: 1, above: 0, density: 0, bend: 0 };
  if (at === Number.NEGATIVE_INFINITY) return { below: 0, above: 1, density: 0, bend: 0 };
  const below = at > 0 ? 1 / (1 + Math.exp(-at)) : Math.exp(at) / (1 + Math.exp(at));
  const above = at > 0 ? Math.exp(-at) / (1 + Math.exp(-at)) : 1 / (1 + Math.exp(at));
  const density = below * above;
  return { below, above, density, bend: density * (above - below) };
}
