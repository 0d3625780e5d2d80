import type { PlanZone } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import { outlineDistance } from '../../science/geometry/polygonArea.ts';

export interface Neighbour {
  readonly a: string;
  readonly b: string;
  readonly gapMm: number;
  readonly why: string;
}

const strengthOrder: readonly EtchStrength[] = ['ground', 'scant', 'light', 'middle', 'dark'];

/**
 * Pairs of zones with different etches that lie nearer than the guard, nearest first:
 * the stronger must not be dragged into the weaker.
 * @param zones may name one id several times, each with another outline: the nearest counts.
 * @param strengths by zone id; zones without a rule are left out.
 * @param guardMm 0 or more.
 */
export function closeNeighbours(
  zones: readonly PlanZone[],
  strengths: ReadonlyMap<string, EtchStrength>,
  guardMm: number,
): Neighbour[] {
  const found = new Map<string, Neighbour>();
  for (const [index, a] of zones.entries()) {
    for (const b of zones.slice(index + 1)) {
      const first = strengths.get(a.id);
      const second = strengths.get(b.id);
      if (!first || !second || first === second) continue;
      const gapMm = outlineDistance(a.polygonMm, b.polygonMm, guardMm);
      if (gapMm >= guardMm) continue;
      const pair = JSON.stringify([a.id, b.id]);
      if ((found.get(pair)?.gapMm ?? Number.POSITIVE_INFINITY) <= gapMm) continue;
      const [strong, weak] = strengthOrder.indexOf(first) > strengthOrder.indexOf(second) ? [a, b] : [b, a];
      found.set(pair, {
        a: a.id,
        b: b.id,
        gapMm,
        why: `${strong.name} takes the stronger etch: keep it out of ${weak.name}`,
      });
    }
  }
  return [...found.values()]
    .toSorted((one, other) => one.gapMm - other.gapMm)
    .map((pair) => ({ ...pair, gapMm: Math.round(pair.gapMm * 100) / 100 }));
}
