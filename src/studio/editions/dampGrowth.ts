import type { Measured } from '../../foundation/measured.ts';
import type { GrainSide, SheetMm } from '../../records/edition.ts';

/** How much a heavy sheet grows when it is damped, per cent. From memory. */
const handPercent = { along: [0.2, 0.5], across: [1, 2] } as const;
/** The most that a lithographic paper grows from moisture, mainly across the grain, per cent. Dawe. */
const mostPercent = 2.5;

/** Growth of a length, mm. @param percent of the length. */
export function growthMm(lengthMm: number, percent: number): number {
  return (lengthMm * percent) / 100;
}

/**
 * How much longer and wider a damp piece is than a dry one. Where the grain is not known either side may be the one that
 * grows.
 */
export function dampGrowth(
  [one, other]: SheetMm,
  grain: GrainSide | 'unknown',
): { readonly long: Measured; readonly short: Measured } {
  return {
    long: sideGrowth(Math.max(one, other), grain === 'unknown' ? null : grain === 'long'),
    short: sideGrowth(Math.min(one, other), grain === 'unknown' ? null : grain === 'short'),
  };
}

/** @param along whether the fibres lie along this side; null: not known. */
function sideGrowth(lengthMm: number, along: boolean | null): Measured {
  const low = along === false ? handPercent.across[0] : handPercent.along[0];
  const high = along === true ? handPercent.along[1] : mostPercent;
  const middle = along === null ? (low + high) / 2 : along ? 0.35 : 1.5;
  return {
    value: growthMm(lengthMm, middle),
    low: growthMm(lengthMm, low),
    high: growthMm(lengthMm, high),
    basis: 'memory',
    warnings: ['Measure one sheet dry and damp: papers differ.'],
  };
}
