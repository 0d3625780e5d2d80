import type {
  Change,
  CoverageInterval,
  UncertaintyParts,
  ZoneResult,
} from '../../../src/records/comparison.ts';

const parts: UncertaintyParts = {
  noise: 0.0012,
  ground: 0.0031,
  solid: 0.0024,
  response: 0.0028,
  registration: 0.0009,
  floor: 0.002,
};

/** A coverage with a symmetric interval kept inside 0..1. */
export function interval(coverage: number, arm: number): CoverageInterval & { parts: UncertaintyParts } {
  return { coverage, low: Math.max(0, coverage - arm), high: Math.min(1, coverage + arm), parts };
}

/** A zone result from the few figures that a gallery record varies. */
export function zoneOf(
  id: string,
  name: string,
  medium: string,
  drawn: number | null,
  printed: number | null,
  change: Change,
  arm = 0.012,
  covered = 1,
): ZoneResult {
  return {
    id,
    name,
    medium,
    drawn: drawn === null ? null : interval(drawn, arm),
    printed: printed === null ? null : interval(printed, arm * 1.2),
    drawnDarkness: drawn === null ? null : drawn * 0.93,
    printedDarkness: printed === null ? null : printed * 0.95,
    change,
    covered,
    areaMm2: 900 + 130 * id.length,
  };
}
