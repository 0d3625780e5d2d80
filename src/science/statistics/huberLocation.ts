import { normalUpperTail } from './normalTail.ts';
import { median, medianAbsoluteDeviation } from './quantile.ts';

const longestRun = 200;
const closeEnough = 1e-10;

/**
 * Huber's location with the scale held at 1.4826 times the median absolute deviation: a mean in which no reading pulls
 * harder than one that lies `bend` scales away. Huber, P. J. (1964), Annals of Mathematical Statistics 35, 73–101,
 * doi 10.1214/aoms/1177703732.
 * @param values in any order, of one unit; at least one.
 * @param bend in scales; 1.5 by custom.
 * @returns in the values' unit; the median where more than half of the values are equal; NaN for none.
 */
export function huberLocation(values: readonly number[], bend = 1.5): number {
  const scale = medianAbsoluteDeviation(values);
  let centre = median(values);
  if (!(scale > 0)) return centre;
  for (let round = 0; round < longestRun; round++) {
    const next = mean(drawnIn(values, centre, bend * scale));
    const moved = Math.abs(next - centre);
    centre = next;
    if (moved < closeEnough * scale) break;
  }
  return centre;
}

/**
 * Huber's proposal 2: location and scale together, the scale made right for a normal distribution (reference as above).
 * @param values in any order, of one unit; at least two.
 * @param bend in scales; 1.5 by custom.
 * @returns both in the values' unit; NaN for fewer than two values, scale 0 where more than half of them are equal.
 */
export function huberProposal2(values: readonly number[], bend = 1.5): { location: number; scale: number } {
  if (values.length < 2) return { location: Number.NaN, scale: Number.NaN };
  const expected = cutVariance(bend);
  let location = median(values);
  let scale = medianAbsoluteDeviation(values);
  for (let round = 0; round < longestRun && scale > 0; round++) {
    const drawn = drawnIn(values, location, bend * scale);
    const next = mean(drawn);
    const spread = drawn.reduce((sum, value) => sum + (value - next) ** 2, 0) / (values.length - 1);
    const nextScale = Math.sqrt(spread / expected);
    const moved = Math.abs(next - location) + Math.abs(nextScale - scale);
    location = next;
    scale = nextScale;
    if (moved < closeEnough * scale) break;
  }
  return { location, scale };
}

/** The values, those farther than `reach` from the centre drawn in to it. */
function drawnIn(values: readonly number[], centre: number, reach: number): number[] {
  return values.map((value) => Math.min(centre + reach, Math.max(centre - reach, value)));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Variance of a standard normal variable drawn in to ± bend: what proposal 2 sets its scale by. */
function cutVariance(bend: number): number {
  const beyond = 2 * normalUpperTail(bend);
  const density = Math.exp((-bend * bend) / 2) / Math.sqrt(2 * Math.PI);
  return 1 - beyond - 2 * bend * density + bend * bend * beyond;
}
