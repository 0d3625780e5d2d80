/** How well hands hold the load. */
export const couplings = ['good', 'fair', 'poor'] as const;
export type Coupling = (typeof couplings)[number];

/** Load constant, kg: what the equation allows where everything is at its best. */
const loadConstantKg = 23;

/**
 * The multipliers of the revised lifting equation, NIOSH 94-110 (1994, revised 2021), metric, by formula and not by the
 * printed tables, three cells of which don't round from it. Each lies between 0 and 1; 0 where the method doesn't reach.
 * @param cm distance of the hands from the ankles; below 25 counts as 25, above 63 gives 0.
 */
export function horizontalMultiplier(cm: number): number {
  return cm > 63 ? 0 : 25 / Math.max(cm, 25);
}

/**
 * For the height of the hands (as above): 1 at 75 cm.
 * @param cm above the floor where the lift starts; below 0 and above 175 gives 0.
 */
export function verticalMultiplier(cm: number): number {
  return cm > 175 || cm < 0 ? 0 : 1 - 0.003 * Math.abs(cm - 75);
}

/** For the way the load goes (as above). @param cm up or down; below 25 counts as 25, above 175 gives 0. */
export function distanceMultiplier(cm: number): number {
  return cm > 175 ? 0 : 0.82 + 4.5 / Math.max(cm, 25);
}

/** For the turn of the body (as above). @param degrees 0 or more; above 135 gives 0. */
export function asymmetryMultiplier(degrees: number): number {
  return degrees > 135 ? 0 : 1 - 0.0032 * degrees;
}

/** For the grip (as above). @param handsCm height of the hands above the floor: from 75 cm on a fair grip costs nothing. */
export function couplingMultiplier(coupling: Coupling, handsCm: number): number {
  switch (coupling) {
    case 'good':
      return 1;
    case 'fair':
      return handsCm < 75 ? 0.95 : 1;
    case 'poor':
      return 0.9;
    default:
      return coupling satisfies never;
  }
}

/** Distance of the hands from the ankles for a load so deep, held against the body, cm; NIOSH 94-110, p. 8. */
export function estimatedHorizontalCm(loadDepthCm: number, handsCm: number): number {
  return (handsCm < 25 ? 25 : 20) + loadDepthCm / 2;
}

/** The factors of one lift, each 0..1. */
export interface LiftingMultipliers {
  readonly horizontal: number;
  readonly vertical: number;
  readonly distance: number;
  readonly asymmetry: number;
  readonly frequency: number;
  readonly coupling: number;
}

/**
 * Recommended weight limit, kg, 0 to 23: the load constant times every factor (as above), for one person with two hands,
 * standing, without carrying.
 */
export function recommendedLimitKg(factors: LiftingMultipliers): number {
  return Object.values(factors).reduce((product: number, factor: number) => product * factor, loadConstantKg);
}
