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

/** @param cm height of the hands above the floor where the lift starts; above 175 gives 0. */
export function verticalMultiplier(cm: number): number {
  return cm > 175 || cm < 0 ? 0 : 1 - 0.003 * Math.abs(cm - 75);
}

/** @param cm how far up or down the load goes; below 25 counts as 25, above 175 gives 0. */
export function distanceMultiplier(cm: number): number {
  return cm > 175 ? 0 : 0.82 + 4.5 / Math.max(cm, 25);
}

/** @param degrees how far the body is turned; above 135 gives 0. */
export function asymmetryMultiplier(degrees: number): number {
  return degrees > 135 ? 0 : 1 - 0.0032 * degrees;
}

/** @param handsCm height of the hands above the floor: from 75 cm on a fair grip costs nothing. */
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

/** Recommended weight limit, kg: for one person with two hands, standing, without carrying. */
export function recommendedLimitKg(factors: LiftingMultipliers): number {
  return Object.values(factors).reduce((product: number, factor: number) => product * factor, loadConstantKg);
}
