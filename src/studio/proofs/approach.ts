/**
 * How a tone goes from its first pull towards a plateau: `start + rise × share`, where the share of the rise is 0 at the
 * first pull and 1 at the latest, and what is still missing shrinks by e^−rate with every pull. Rate 0 is a straight line,
 * a rate below 0 gains more with every pull.
 */
export interface Approach {
  /** Number of the first pull, and how many numbers the latest lies after it (above 0). */
  readonly first: number;
  readonly span: number;
  readonly rate: number;
}

/** Rates this near 0 can't be told from a straight line in double precision. */
const straight = 1e-6;

/** Share of the rise at pull `n`. */
export function shareAt({ first, span, rate }: Approach, n: number): number {
  const gone = n - first;
  return Math.abs(rate) < straight ? gone / span : Math.expm1(-rate * gone) / Math.expm1(-rate * span);
}

/** Share of the rise that the two pulls after pull `n` add. */
export function nextTwo(approach: Approach, n: number): number {
  return shareAt(approach, n + 2) - shareAt(approach, n);
}

/** Share of the rise at the plateau, 1 or more; null where there is none. */
export function shareOfPlateau({ span, rate }: Approach): number | null {
  return rate < straight ? null : -1 / Math.expm1(-rate * span);
}

/**
 * The pull from which on two further pulls change a tone by no more than `tolerance`, not before the first.
 * @param rise change of darkness from the first pull to the latest.
 * @returns a pull's number, not rounded; Infinity where there is none.
 */
export function settledFrom(approach: Approach, rise: number, tolerance: number): number {
  const { first, span, rate } = approach;
  const atFirst = Math.abs(rise * nextTwo(approach, first));
  if (rate < straight) {
    const atLast = Math.abs(rise * nextTwo(approach, first + span));
    return Math.max(atFirst, atLast) <= tolerance ? first : Infinity;
  }
  return atFirst <= tolerance ? first : first + Math.log(atFirst / tolerance) / rate;
}
