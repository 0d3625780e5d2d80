import type { Measured } from '../../foundation/measured.ts';

/** Up to so many kilograms, judged by the upper end of the range. Our rule, no source. */
export const liftingLimitsKg = { alone: 15, twoPeople: 50 };

/**
 * How a stone of that mass is to be moved, in one or two sentences; local rules come first.
 * @param massKg null where no thickness is known: then nothing is taken for light.
 */
export function liftingCaution(massKg: Measured | null): string {
  const basis = 'Our rule, no source: local rules come first.';
  if (massKg === null)
    return `No thickness is written down, so its mass is not known: take it for too heavy to lift alone. ${basis}`;
  if (massKg.high <= liftingLimitsKg.alone)
    return `One person can carry it, close to the body and with dry gloves. ${basis}`;
  if (massKg.high <= liftingLimitsKg.twoPeople)
    return `Two people, or a trolley at the height of the bed; set it down on laths, never on fingers. ${basis}`;
  return `Not by hand: a hoist or a lifting table, and a trolley at the height of the bed. ${basis}`;
}
