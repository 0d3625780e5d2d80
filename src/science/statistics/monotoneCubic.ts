/**
 * How slopes at the knots are chosen. Both keep the curve between its knots' values; between knots they differ.
 * - `harmonic`: weighted harmonic means, Fritsch, F. N. & Butland, J. (1984), SIAM J. Scientific and Statistical
 *   Computing 5, 300–304, doi 10.1137/0905021, with three-point slopes at the ends.
 * - `circle`: means of neighbouring secants drawn into a circle of radius 3, Fritsch, F. N. & Carlson, R. E. (1980),
 *   SIAM J. Numerical Analysis 17, 238–246, doi 10.1137/0717021, with one-sided slopes at the ends.
 */
export type SlopeRule = 'harmonic' | 'circle';

/**
 * Slopes at the knots of the monotone cubic through them.
 * @param x strictly rising, at least two.
 * @param y one per knot, any direction, in any unit.
 */
export function knotSlopes(x: readonly number[], y: readonly number[], rule: SlopeRule): number[] {
  const widths = x.slice(1).map((at, i) => at - x[i]!);
  const secants = widths.map((width, i) => (y[i + 1]! - y[i]!) / width);
  switch (rule) {
    case 'harmonic':
      return harmonicSlopes(widths, secants);
    case 'circle':
      return circleSlopes(secants);
    default: {
      const never: never = rule;
      return never;
    }
  }
}

/**
 * The piecewise cubic through points that rises only where they rise and never leaves the range of its two neighbours.
 * @param x strictly rising, at least two.
 * @param y one per knot.
 * @returns the curve; outside the knots it goes on at the value of the nearest end; NaN for NaN.
 */
export function monotoneCubic(
  x: readonly number[],
  y: readonly number[],
  rule: SlopeRule = 'harmonic',
): (at: number) => number {
  const slopes = knotSlopes(x, y, rule);
  const last = x.length - 1;
  return (at) => {
    if (at <= x[0]!) return y[0]!;
    if (at >= x[last]!) return y[last]!;
    let from = 0;
    let to = last;
    while (to - from > 1) {
      const middle = (from + to) >> 1;
      if (x[middle]! <= at) from = middle;
      else to = middle;
    }
    const width = x[to]! - x[from]!;
    const t = (at - x[from]!) / width;
    const rest = 1 - t;
    return (
      y[from]! * (1 + 2 * t) * rest * rest +
      y[to]! * (3 - 2 * t) * t * t +
      width * t * rest * (slopes[from]! * rest - slopes[to]! * t)
    );
  };
}

function harmonicSlopes(widths: readonly number[], secants: readonly number[]): number[] {
  const last = secants.length;
  if (last === 1) return [secants[0]!, secants[0]!];
  const slopes = secants.slice(1).map((after, i) => {
    const before = secants[i]!;
    if (before * after <= 0) return 0;
    const left = 2 * widths[i + 1]! + widths[i]!;
    const right = widths[i + 1]! + 2 * widths[i]!;
    return (left + right) / (left / before + right / after);
  });
  return [
    endSlope(widths[0]!, widths[1]!, secants[0]!, secants[1]!),
    ...slopes,
    endSlope(widths[last - 1]!, widths[last - 2]!, secants[last - 1]!, secants[last - 2]!),
  ];
}

/** Slope at an end by the parabola through three points, cut so that the curve stays monotone (Moler's rule). */
function endSlope(width: number, nextWidth: number, secant: number, nextSecant: number): number {
  const slope = ((2 * width + nextWidth) * secant - width * nextSecant) / (width + nextWidth);
  if (slope * secant <= 0) return 0;
  if (secant * nextSecant < 0 && Math.abs(slope) > Math.abs(3 * secant)) return 3 * secant;
  return slope;
}

function circleSlopes(secants: readonly number[]): number[] {
  const last = secants.length;
  const slopes = [
    secants[0]!,
    ...secants.slice(1).map((after, i) => (secants[i]! + after) / 2),
    secants[last - 1]!,
  ];
  for (const [i, secant] of secants.entries()) {
    if (i + 1 < last && secant * secants[i + 1]! <= 0) slopes[i + 1] = 0;
    if (secant === 0) {
      slopes[i] = 0;
      slopes[i + 1] = 0;
      continue;
    }
    const left = slopes[i]! / secant;
    const right = slopes[i + 1]! / secant;
    const reach = Math.hypot(left, right);
    if (reach > 3) {
      slopes[i] = (3 * left * secant) / reach;
      slopes[i + 1] = (3 * right * secant) / reach;
    }
  }
  return slopes;
}
