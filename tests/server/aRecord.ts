import {
  type ComparisonRecord,
  comparisonSchema,
  defaultParameters,
  type Verdict,
} from '../../src/records/comparison.ts';
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
