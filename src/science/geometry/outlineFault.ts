import type { Point } from './point.ts';
import { convexHull, crossesItself, signedArea } from './polygon.ts';

/**
 * What keeps a closed outline from bounding an area: `degenerate` where its points lie in one place or on one line, or
 * it encloses less than `leastArea`; `self-crossing` where it crosses or touches itself; null when usable. Points
 * that repeat the one before are passed over. What counts as a fault is our rule.
 * @param outline in any unit, the closing point not repeated; `leastArea` in that unit squared.
 */
export function outlineFault(
  outline: readonly Point[],
  leastArea: number,
): 'degenerate' | 'self-crossing' | null {
  const distinct = outline.filter(([x, y], index) => {
    const [nextX, nextY] = outline[(index + 1) % outline.length]!;
    return x !== nextX || y !== nextY;
  });
  // Points on one line also cross themselves: that they enclose nothing is the better word for it.
  if (distinct.length < 3 || Math.abs(signedArea(convexHull(distinct))) < leastArea) return 'degenerate';
  if (crossesItself(distinct)) return 'self-crossing';
  return Math.abs(signedArea(distinct)) < leastArea ? 'degenerate' : null;
}
