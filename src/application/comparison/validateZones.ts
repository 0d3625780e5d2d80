import { type Failure, failure } from '../../foundation/failure.ts';
import type { Zone } from '../../records/zone.ts';
import { outlineFault } from '../../science/geometry/outlineFault.ts';
import type { Point } from '../../science/geometry/point.ts';

/** A point may lie this far outside the work rectangle: outlines are drawn by hand along its border. */
const borderToleranceMm = 0.5;
/** The area of a pen dot; less encloses nothing that could be measured. */
const smallestAreaMm2 = 0.01;

/**
 * Judges zones (stone mm) against the work rectangle: ids not twice, an area, no outline that crosses itself,
 * every point inside or within 0.5 mm of the border. None at all is legal. Null when usable, else the first fault.
 */
export function validateZones(zones: readonly Zone[], sizeMm: Point): Failure | null {
  const ids = new Set<string>();
  for (const [index, { id, polygonMm }] of zones.entries()) {
    if (ids.has(id)) return failure('zone-duplicate', { id }, `zones[${index}].id`);
    ids.add(id);
    const fault = judgeOutline(id, polygonMm, sizeMm, `zones[${index}].polygonMm`);
    if (fault) return fault;
  }
  return null;
}

function judgeOutline(id: string, polygonMm: readonly Point[], sizeMm: Point, path: string): Failure | null {
  const outside = polygonMm.findIndex((point) => point.some((value, axis) => !within(value, sizeMm[axis]!)));
  if (outside >= 0) {
    return failure('zone-outside', { id, width: sizeMm[0], height: sizeMm[1] }, `${path}[${outside}]`);
  }
  const fault = outlineFault(polygonMm, smallestAreaMm2);
  return fault && failure(`zone-${fault}`, { id }, path);
}

function within(value: number, extent: number): boolean {
  return value >= -borderToleranceMm && value <= extent + borderToleranceMm;
}
