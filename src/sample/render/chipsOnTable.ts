import type { Chip } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { Body } from './body.ts';
import type { Camera } from './camera.ts';
import type { PairCase } from './pairCase.ts';
import type { PlacedChip } from './takePhotograph.ts';

/** Side of a chip. */
export const chipSizeMm = 13;
const chipGapMm = 8;
const chipReflectances = [0.86, 0.56, 0.33, 0.19, 0.09, 0.045];

/** A column of grey chips on the table at the object's right. */
export function placedChips(pair: PairCase, body: Body): PlacedChip[] {
  if (!pair.chips) return [];
  return chipReflectances.map((reflectance, i) => ({
    name: `grey ${reflectance}`,
    reflectance,
    leftMm: body.rightMm + chipGapMm,
    topMm: body.topMm + 30 + i * (chipSizeMm + 1.5),
    widthMm: chipSizeMm,
    heightMm: chipSizeMm,
  }));
}

/** Outlines as a person draws them, well inside each chip. */
export function chipsSeen(photo: 'stone' | 'proof', chips: readonly PlacedChip[], seen: Camera): Chip[] {
  return chips.map((chip) => {
    const inset = 2.2;
    const [left, top] = [chip.leftMm + inset, chip.topMm + inset];
    const [right, bottom] = [chip.leftMm + chip.widthMm - inset, chip.topMm + chip.heightMm - inset];
    const cornersMm: Point[] = [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ];
    return {
      photo,
      name: chip.name,
      polygonPx: cornersMm.map((mm) => seen.toPx(mm)),
      reflectance: chip.reflectance,
    };
  });
}
