import type { WorkZone } from '../../records/work.ts';
import { outlineFault } from '../../science/geometry/outlineFault.ts';
import type { Point } from '../../science/geometry/point.ts';
import { say } from '../words/say.ts';

type Fault = ReturnType<typeof outlineFault>;

/** Less encloses nothing that could be etched; the server's own limit. */
const smallestAreaMm2 = 1;
const faults = new WeakMap<readonly Point[], { readonly fault: Fault }>();

/** What keeps an outline from being saved; null when nothing does. Kept for as long as the outline is. */
export function faultOf(outline: readonly Point[]): Fault {
  const kept = faults.get(outline);
  if (kept) return kept.fault;
  const fault = outlineFault(outline, smallestAreaMm2);
  faults.set(outline, { fault });
  return fault;
}

/** A sentence for each zone that can't be saved as it is drawn. */
export function faultWords(zones: readonly WorkZone[]): readonly string[] {
  return zones.flatMap(({ name, polygonMm }) => {
    const fault = faultOf(polygonMm);
    if (fault === null) return [];
    return fault === 'self-crossing'
      ? [say('The outline of {name} crosses itself: move a point until it goes once round.', { name })]
      : [say('{name} encloses nothing: draw its points apart, or take it away.', { name })];
  });
}
