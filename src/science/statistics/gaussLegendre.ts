/** A place to look at a function, and how much it counts. */
interface Node {
  readonly at: number;
  readonly weight: number;
}

/**
 * Integral by Gauss and Legendre's rule on equal panels, exact for polynomials of degree 2·points − 1 on each.
 * Abramowitz & Stegun (1964), 25.4.29.
 * @param panels whole, at least 1. @param points nodes of one panel, whole, at least 1.
 */
export function integrate(
  value: (at: number) => number,
  low: number,
  high: number,
  panels: number,
  points = 16,
): number {
  const half = (high - low) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = low + (2 * panel + 1) * half;
    for (const node of nodesOf(points)) sum += node.weight * value(middle + half * node.at);
  }
  return sum * half;
}

const known = new Map<number, readonly Node[]>();

function nodesOf(points: number): readonly Node[] {
  const found = known.get(points);
  if (found) return found;
  const nodes = Array.from({ length: points }, (_, k) => nodeOf(points, k));
  known.set(points, nodes);
  return nodes;
}

/** The k-th root of Legendre's polynomial by Newton's steps from its asymptotic place. */
function nodeOf(points: number, k: number): Node {
  let at = Math.cos((Math.PI * (k + 0.75)) / (points + 0.5));
  let slope = 1;
  for (let step = 0; step < 50; step++) {
    let before = 1;
    let here = at;
    for (let n = 2; n <= points; n++)
      [before, here] = [here, ((2 * n - 1) * at * here - (n - 1) * before) / n];
    if (points === 1) [before, here] = [1, at];
    slope = (points * (at * here - before)) / (at * at - 1);
    const move = here / slope;
    at -= move;
    if (Math.abs(move) < 1e-15) break;
  }
  return { at, weight: 2 / ((1 - at * at) * slope * slope) };
}
