import {
  type ComparisonRecord,
  comparisonSchema,
  defaultParameters,
  type Verdict,
  type ZoneResult,
} from '../../src/records/comparison.ts';
import type { Zone } from '../../src/records/zone.ts';
import type { Point } from '../../src/science/geometry/point.ts';

/** A record with nothing measured in it but its verdict. */
export function aRecord(verdict: Verdict, sizeMm: Point): ComparisonRecord {
  return {
    schema: comparisonSchema,
    engine: 'a stand-in',
    parameters: { ...defaultParameters, sizeMm },
    verdict,
    reason: verdict === 'ok' ? null : 'The print reads the same way round as the stone.',
    warnings: [],
    registration: null,
    ground: null,
    response: null,
    solid: { stone: null, proof: null },
    strength: { stone: null, proof: null },
    zones: [],
    toneCurves: [],
    areas: { lostFraction: 0, filledFraction: 0, scumFraction: 0, covered: 1 },
    maps: null,
  };
}

/** A zone that printed as it was drawn. */
export function heldZone({ id, name, medium }: Zone): ZoneResult {
  const parts = { noise: 0, ground: 0, solid: 0, response: 0, registration: 0, floor: 0.01 };
  const half = { coverage: 0.5, low: 0.48, high: 0.52, parts };
  return {
    id,
    name,
    medium,
    drawn: half,
    printed: half,
    drawnDarkness: 0.45,
    printedDarkness: 0.45,
    change: 'held',
    covered: 1,
    areaMm2: 1000,
  };
}
