/**
 * Minutes until a share of what hangs in a room's air is gone, by fresh air alone: t = −ln(1 − removal) · k / N · 60.
 * CDC 2003, Guidelines for Environmental Infection Control in Health-Care Facilities, Table B.1, whose rows are for an empty
 * room, no source, and perfect mixing (k = 1).
 * @param airChangesPerHour N, above 0.
 * @param removal share to be gone, above 0 and below 1.
 * @param mixingFactor k, 1 or more: how many times slower a room clears that doesn't mix perfectly.
 * @returns NaN outside these ranges.
 */
export function clearanceMinutes(airChangesPerHour: number, removal: number, mixingFactor = 1): number {
  if (!(airChangesPerHour > 0 && removal > 0 && removal < 1 && mixingFactor >= 1)) return Number.NaN;
  return (-Math.log1p(-removal) * mixingFactor * 60) / airChangesPerHour;
}
