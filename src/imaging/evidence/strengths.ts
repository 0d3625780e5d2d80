import type { ComparisonRecord } from '../../records/comparison.ts';
import type { FeatureReading } from '../../records/suspects.ts';
import { reading } from './reading.ts';

/** Density of a full film above its ground, where the studio has no reference of its own. From memory, varies with ink, paper and stone. */
export const usualStrength = { print: 1.3, stone: 0.95 };

export interface StrengthReference {
  readonly print: number;
  readonly stone: number;
}

/** By how much the solid is weaker than usual, density; null where it was not read. */
export function strengths(
  { strength }: Pick<ComparisonRecord, 'strength'>,
  reference: StrengthReference,
): { printPale: FeatureReading | null; stonePale: FeatureReading | null } {
  const told = (side: 'print' | 'stone') => {
    const read = strength[side === 'print' ? 'proof' : 'stone'];
    if (!read) return null;
    const note = `solid ${read.value.toFixed(2)} D, usual ${reference[side].toFixed(2)} D`;
    // The camera's own curve is worth about this much where no chips tell it.
    return reading(reference[side] - read.value, Math.hypot((read.high - read.low) / 3.92, 0.05), note);
  };
  return { printPale: told('print'), stonePale: told('stone') };
}
