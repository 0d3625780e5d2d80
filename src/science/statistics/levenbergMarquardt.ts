import { inverseCrossProduct, leastSquares } from './leastSquares.ts';

/** What was fitted, and how well its parameters are known. */
export interface NonlinearFit {
  readonly parameters: readonly number[];
  /** Standard deviations of the parameters, from the scatter about the fit; null where the data don't determine them all. */
  readonly standardErrors: readonly number[] | null;
  readonly residualSumOfSquares: number;
  /** Observations less parameters. */
  readonly degreesOfFreedom: number;
  /** false: the last step was still moving when the steps were spent. */
  readonly converged: boolean;
}

/** How often a step may be tried. */
const mostTrials = 5000;
/** Starts downhill in small steps: found by trial, less than 100 sends certified sets away to where they don't come back from. */
const firstDamping = 1000;
/** Done when a step moves no parameter by more than this share of its own scale. */
const smallestMove = 1e-11;
/** Least misfit a double can tell from none, as a share of what was there at the start. */
const smallestMisfit = 1e-28;
/** Cube root of the double's precision: the best step for central differences. */
const differenceStep = Math.cbrt(Number.EPSILON);

/**
 * Least squares for a curve that bends in its parameters: Levenberg 1944 (doi 10.1090/qam/10666) and Marquardt 1963
 * (doi 10.1137/0111030). Each step is solved by QR of the Jacobian with the damping rows beneath it, in parameters scaled by
 * the longest column that each has shown so far (Moré 1978, doi 10.1007/BFb0067700); the damping follows the gain of each
 * step (Nielsen 1999, IMM-REP-1999-05).
 * @param misfits observed less fitted, one per observation; a trial with NaN or an infinity among them is stepped back from.
 * @param start one value per parameter; misfits must be finite there.
 * @returns null where there are no parameters, fewer observations than parameters, or misfits at the start that aren't finite.
 */
export function levenbergMarquardt(
  misfits: (parameters: readonly number[]) => readonly number[],
  start: readonly number[],
): NonlinearFit | null {
  let parameters: readonly number[] = start;
  let left = misfits(parameters);
  let cost = squares(left);
  if (start.length === 0 || left.length < start.length || !Number.isFinite(cost)) return null;
  const leastCost = cost * smallestMisfit;
  const scales = start.map(() => 0);
  let damping = firstDamping;
  let growth = 2;
  let converged = cost === 0;
  let slopes = jacobian(misfits, parameters);
  widen(scales, slopes);
  for (let trial = 0; trial < mostTrials && !converged; trial++) {
    const step = dampedStep(slopes, left, scales, damping);
    const moved = step && parameters.map((value, k) => value + step[k]!);
    if (!step || !moved) break;
    const small = moved.every(
      (value, k) => Math.abs(value - parameters[k]!) <= smallestMove * (Math.abs(value) + 1e-30),
    );
    const found = misfits(moved);
    const foundCost = squares(found);
    const promised = promisedGain(slopes, left, step);
    const gain = (cost - foundCost) / promised;
    if (foundCost <= cost && promised > 0) {
      parameters = moved;
      left = found;
      cost = foundCost;
      slopes = jacobian(misfits, parameters);
      widen(scales, slopes);
      damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3);
      growth = 2;
    } else {
      damping *= growth;
      growth *= 2;
    }
    converged = small || cost <= leastCost || !(damping < 1e100);
  }
  const degreesOfFreedom = left.length - start.length;
  const spread = degreesOfFreedom > 0 ? inverseCrossProduct(slopes) : null;
  return {
    parameters,
    standardErrors: spread?.map((row, k) => Math.sqrt((row[k]! * cost) / degreesOfFreedom)) ?? null,
    residualSumOfSquares: cost,
    degreesOfFreedom,
    converged,
  };
}

/** The step δ that makes |r − Jδ|² + damping·|Dδ|² least, in scaled parameters; null where it can't be had. */
function dampedStep(
  slopes: readonly (readonly number[])[],
  left: readonly number[],
  scales: readonly number[],
  damping: number,
): number[] | null {
  const rows = slopes.map((row) => row.map((value, k) => value / scales[k]!));
  const brakes = scales.map((_, k) => scales.map((_, i) => (i === k ? Math.sqrt(damping) : 0)));
  const scaled = leastSquares([...rows, ...brakes], [...left, ...scales.map(() => 0)], null);
  const step = scaled?.map((value, k) => value / scales[k]!);
  return step?.every(Number.isFinite) ? step : null;
}

/** How much smaller the sum of squares would become if the curve were straight in its parameters. */
function promisedGain(
  slopes: readonly (readonly number[])[],
  left: readonly number[],
  step: readonly number[],
): number {
  return (
    squares(left) -
    squares(left.map((value, i) => value - slopes[i]!.reduce((sum, slope, k) => sum + slope * step[k]!, 0)))
  );
}

/** Slopes of the fitted values by central differences: one row per observation. */
function jacobian(
  misfits: (parameters: readonly number[]) => readonly number[],
  parameters: readonly number[],
): number[][] {
  const columns = parameters.map((value, k) => {
    const step = differenceStep * (Math.abs(value) || 1);
    const above = value + step;
    const below = value - step;
    const upper = misfits(parameters.map((kept, i) => (i === k ? above : kept)));
    const lower = misfits(parameters.map((kept, i) => (i === k ? below : kept)));
    return lower.map((left, i) => finite((left - upper[i]!) / (above - below)));
  });
  return columns[0]!.map((_, i) => columns.map((column) => column[i]!));
}

function finite(slope: number): number {
  return Number.isFinite(slope) ? slope : 0;
}

/** Each parameter's scale grows with its column and never shrinks; a column of nothing scales as 1. */
function widen(scales: number[], slopes: readonly (readonly number[])[]): void {
  for (let k = 0; k < scales.length; k++) {
    scales[k] = Math.max(scales[k]!, Math.hypot(...slopes.map((row) => row[k]!))) || 1;
  }
}

/** Sum of squares; Infinity where a value is not finite. */
function squares(values: readonly number[]): number {
  const sum = values.reduce((total, value) => total + value * value, 0);
  return Number.isFinite(sum) ? sum : Infinity;
}
