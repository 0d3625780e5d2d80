import type { RoomAnswer } from '../../records/roomAnswer.ts';
import { clearanceMinutes } from '../../science/air/clearance.ts';
import { localRules } from './localRules.ts';

/** How many times slower than perfect mixing real rooms clear; general ventilation practice, no source. */
export const usualMixing = { low: 3, high: 10 };

/**
 * Minutes until a share of what hangs in the air has gone by air changes.
 * @param airChangesPerHour above 0.
 * @param removal share, above 0 and below 1.
 */
export function airClearing(airChangesPerHour: number, removal: number): RoomAnswer {
  const value = clearanceMinutes(airChangesPerHour, removal);
  const slow = (mixing: number) => Math.round(clearanceMinutes(airChangesPerHour, removal, mixing));
  return {
    kind: 'air',
    value,
    unit: 'min',
    range: {
      low: value,
      high: clearanceMinutes(airChangesPerHour, removal, usualMixing.high),
      reason: 'from perfect mixing, which no room has, to a mixing factor of 10',
    },
    formula:
      't = −ln(1 − removal) · k / N · 60, k the mixing factor (1 at the low end), N air changes an hour',
    source:
      'CDC 2003, Guidelines for Environmental Infection Control in Health-Care Facilities, Table B.1; mixing factors 3 to 10: general ventilation practice, no source',
    words: [
      `Reckon with ${slow(usualMixing.low)} to ${slow(usualMixing.high)} min: few rooms mix well (mixing factor 3 to 10).`,
      'It holds for an empty room in which nothing more is given off: while rags, stones or open tins give off vapour it never ends.',
      'The air changes are what the fan really moves, measured, not what its label says.',
      localRules.air,
    ],
  };
}
