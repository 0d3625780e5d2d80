import type { WorkZone } from '../../records/work.ts';
import type { WorkVerdicts } from '../../records/workEntry.ts';
import type { Point } from '../../science/geometry/point.ts';
import { outlineDistance, sharedArea } from '../../science/geometry/polygonArea.ts';

/** Our rules, no source: less shared area is how two hand-drawn outlines meet; a narrower strip can't be gummed by brush. */
export const zoneRules = { smallestOverlapMm2: 4, narrowGapMm: 2 };

interface Box {
  readonly zone: WorkZone;
  readonly least: Point;
  readonly most: Point;
}

/**
 * Overlaps, and narrow strips of ground, between zones (stone mm). Pairs whose boxes lie apart are passed over.
 * @param zones outlines that are not self-crossing.
 */
export function zoneFindings(zones: readonly WorkZone[]): Pick<WorkVerdicts, 'overlaps' | 'gaps'> {
  const boxes = zones.map(boxOf);
  const overlaps: { a: string; b: string; areaCm2: number }[] = [];
  const gaps: { a: string; b: string; gapMm: number }[] = [];
  for (const [index, one] of boxes.entries()) {
    for (const other of boxes.slice(index + 1)) {
      if (apartMm(one, other) >= zoneRules.narrowGapMm) continue;
      const pair = { a: one.zone.id, b: other.zone.id };
      const sharedMm2 = sharedArea(one.zone.polygonMm, other.zone.polygonMm);
      if (sharedMm2 >= zoneRules.smallestOverlapMm2) {
        overlaps.push({ ...pair, areaCm2: hundredths(sharedMm2 / 100) });
        continue;
      }
      const gapMm = sharedMm2 > 0 ? 0 : outlineDistance(one.zone.polygonMm, other.zone.polygonMm);
      if (gapMm > 0.005 && gapMm < zoneRules.narrowGapMm) gaps.push({ ...pair, gapMm: hundredths(gapMm) });
    }
  }
  return { overlaps, gaps };
}

function boxOf(zone: WorkZone): Box {
  const xs = zone.polygonMm.map(([x]) => x);
  const ys = zone.polygonMm.map(([, y]) => y);
  return {
    zone,
    least: [Math.min(...xs), Math.min(...ys)],
    most: [Math.max(...xs), Math.max(...ys)],
  };
}

/** How far two boxes lie apart along the axis on which they lie farther apart; negative where they overlap. */
function apartMm(one: Box, other: Box): number {
  return Math.max(
    one.least[0] - other.most[0],
    other.least[0] - one.most[0],
    one.least[1] - other.most[1],
    other.least[1] - one.most[1],
  );
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
