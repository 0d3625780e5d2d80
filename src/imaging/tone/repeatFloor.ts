import type { Point } from '../../science/geometry/point.ts';
import { median } from '../../science/statistics/quantile.ts';
import { coverageMap } from '../maps/coverageMaps.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import { readSide, type SideTone } from './readSide.ts';
import type { SideInput } from './sideInput.ts';

/** The same object set up and photographed again, already brought onto stone mm. */
export interface RepeatedPhotograph {
  readonly photo: Photograph;
  readonly map: PlaneMap;
}

/**
 * σ of one reading, from the same object set up and photographed again: half-centimetre places compared.
 * @param input what `first` was read from
 * @returns null without a repeat, or where too little of it can be compared.
 */
export function repeatFloor(
  input: SideInput,
  first: SideTone | null,
  repeat: RepeatedPhotograph | null,
): number | null {
  if (!repeat || !first?.solid) return null;
  const again = readSide({ ...input, photo: repeat.photo, map: repeat.map, chips: [], flat: null });
  if (!again?.solid) return null;
  const one = placesOf(first, first.solid.darkness, input.sizeMm);
  const two = placesOf(again, again.solid.darkness, input.sizeMm);
  const differences: number[] = [];
  for (let i = 0; i < one.length; i += 5) {
    const off = Math.abs(one[i]! - two[i]!);
    if (!Number.isNaN(off)) differences.push(off);
  }
  return differences.length < 50 ? null : (1.4826 * median(differences)) / Math.SQRT2;
}

function placesOf(side: SideTone, solid: number, sizeMm: Point): Float32Array {
  return coverageMap(side, solid, sizeMm, 2.5, null).data;
}
