import { type Failure, failure } from '../../foundation/failure.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';

const smallestMm = 10;
const largestMm = 3000;

/** Beyond this no tilt that leaves a readable photograph foreshortens a side against the other. */
const impossibleFactor = 3;
/** Foreshortening by this needs a tilt over 51°, which also makes opposite sides differ by more than `flatFactor`. */
const tiltedFactor = 1.6;
/** At 51° an object seen from four times its length away still converges by a fifth. */
const flatFactor = 1.2;

/** Judges the work rectangle's size in mm by itself: two finite numbers, 10 to 3000 mm. Null when usable. */
export function validateSize(sizeMm: Point): Failure | null {
  const given = sizeMm.join('x');
  if (!sizeMm.every(Number.isFinite)) return refuse(given, 'it is not two numbers');
  if (sizeMm.some((side) => side <= 0)) return refuse(given, 'a side must be longer than nothing');
  if (sizeMm.some((side) => side > largestMm)) return refuse(given, `a side is longer than ${largestMm} mm`);
  if (sizeMm.some((side) => side < smallestMm))
    return refuse(given, `a side is shorter than ${smallestMm} mm`);
  return null;
}

/**
 * Judges the size against the stone's corners (photograph px): refuses only proportions that no camera position
 * could give, such as width and height swapped on a photograph taken squarely. Null when possible.
 */
export function validateProportions(sizeMm: Point, stoneCorners: Corners): Failure | null {
  const [top, right, bottom, left] = stoneCorners.map((corner, index) => {
    const next = stoneCorners[(index + 1) % 4]!;
    return Math.hypot(next[0] - corner[0], next[1] - corner[1]);
  }) as [number, number, number, number];
  const seen = (top + bottom) / (left + right);
  const factor = ratio(seen, sizeMm[0] / sizeMm[1]);
  const convergence = Math.max(ratio(top, bottom), ratio(left, right));
  if (factor < tiltedFactor || (factor < impossibleFactor && convergence > flatFactor)) return null;
  const why = `the stone's corners enclose a shape about ${seen.toFixed(2)} times as wide as high`;
  return refuse(sizeMm.join('x'), why);
}

function ratio(first: number, second: number): number {
  return first > second ? first / second : second / first;
}

function refuse(given: string, why: string): Failure {
  return failure('size-invalid', { given, why }, 'sizeMm');
}
