import type { Chip, Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { Mask } from '../raster.ts';

/** One object to be read: the stone or the print. */
export interface SideInput {
  readonly side: 'stone' | 'proof';
  readonly photo: Photograph;
  /** From stone mm to this photograph. */
  readonly map: PlaneMap;
  /** A blank white sheet photographed from the same place under the same light. */
  readonly flat: Photograph | null;
  /** Only those seen on this photograph. */
  readonly chips: readonly Chip[];
  readonly zones: readonly Zone[];
  readonly sizeMm: Point;
  /** Where the sheet is, over the work rectangle; null: everywhere. */
  readonly covered: Mask | null;
}
