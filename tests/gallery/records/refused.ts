import type { ComparisonRecord } from '../../../src/records/comparison.ts';
import { lowWater } from './lowWater.ts';

const refused: ComparisonRecord = {
  ...lowWater,
  verdict: 'unmirrored',
  reason: 'The photograph of the print lies on the stone only when it is not mirrored, turned by 90 degrees.',
  warnings: [],
  registration: null,
  ground: null,
  response: null,
  solid: { stone: null, proof: null },
  strength: { stone: null, proof: null },
  zones: [],
  toneCurves: [],
  areas: { lostFraction: null, filledFraction: null, scumFraction: null, covered: null },
  maps: null,
};

/** A print photographed through its back, or its picture flipped. */
export const unmirrored: ComparisonRecord = refused;

/** A print of another stone. */
export const noMatch: ComparisonRecord = {
  ...refused,
  verdict: 'no-match',
  reason:
    'Of eight ways to lay the print on the stone none agreed in more than 4 of 96 places; at least 24 are needed.',
  warnings: [{ code: 'blurred', message: 'The photograph of the print is out of focus or shaken.' }],
};
