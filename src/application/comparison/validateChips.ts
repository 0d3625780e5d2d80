import { type Failure, failure } from '../../foundation/failure.ts';
import type { Chip } from '../../records/zone.ts';

/** Judges the chips of one photograph against its size: every point inside the picture. Null when usable. */
export function validateChips(
  chips: readonly Chip[],
  photo: 'stone' | 'proof',
  widthPx: number,
  heightPx: number,
): Failure | null {
  for (const [index, chip] of chips.entries()) {
    if (chip.photo !== photo) continue;
    const inside = chip.polygonPx.every(([x, y]) => x >= 0 && x <= widthPx && y >= 0 && y <= heightPx);
    if (!inside) return failure('chip-outside', { name: chip.name, photo }, `chips[${index}].polygonPx`);
  }
  return null;
}
