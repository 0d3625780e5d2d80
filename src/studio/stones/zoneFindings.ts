import type { WorkZone } from '../../records/work.ts';
import type { WorkVerdicts } from '../../records/workEntry.ts';
import { outlineDistance, sharedArea } from '../../science/geometry/polygonArea.ts';

/** Our rules, no source: less shared area is how two hand-drawn outlines meet; a narrower strip can't be gummed by brush. */
export const zoneRules = { smallestOverlapMm2: 4, narrowGapMm: 2 };

/**
 * Overlaps, and narrow strips of ground, between zones (stone mm).
 * @param zones outlines that are not self-crossing.
 */
export function zoneFindings(zones: readonly WorkZone[]): Pick<WorkVerdicts, 'overlaps' | 'gaps'> {
  const overlaps: { a: string; b: string; areaCm2: number }[] = [];
  const gaps: { a: string; b: string; gapMm: number }[] = [];
  for (const [index, one] of zones.entries()) {
    for (const other of zones.slice(index + 1)) {
      const pair = { a: one.id, b: other.id };
      const gapMm = outlineDistance(one.polygonMm, other.polygonMm, zoneRules.narrowGapMm);
      if (gapMm > 0.005 && gapMm < zoneRules.narrowGapMm) gaps.push({ ...pair, gapMm: hundredths(gapMm) });
      if (gapMm > 0) continue;
      const sharedMm2 = sharedArea(one.polygonMm, other.polygonMm);
      if (sharedMm2 >= zoneRules.smallestOverlapMm2) {
        overlaps.push({ ...pair, areaCm2: hundredths(sharedMm2 / 100) });
      }
    }
  }
  return { overlaps, gaps };
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
