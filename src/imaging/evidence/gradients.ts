import type { FeatureReading } from '../../records/suspects.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

/**
 * By which share the print grows darker from one end to the other, along and across the stone's travel (down the grid):
 * size, with the darker side as its note. null where too little is drawn.
 */
export function gradients({ plane }: PulledTone): {
  gradientAlong: FeatureReading | null;
  gradientAcross: FeatureReading | null;
} {
  const known = Number.isFinite(plane.acrossDeviation);
  const side = (slope: number, first: string, last: string) =>
    `darker towards the ${slope > 0 ? last : first}`;
  return {
    gradientAlong: known
      ? reading(
          Math.abs(plane.down),
          plane.downDeviation,
          side(plane.down, 'start of the travel', 'end of the travel'),
        )
      : null,
    gradientAcross: known
      ? reading(
          Math.abs(plane.across),
          plane.acrossDeviation,
          side(plane.across, 'left as it travels', 'right as it travels'),
        )
      : null,
  };
}
