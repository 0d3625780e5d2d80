import type { ComparisonRecord } from '../../../src/records/comparison.ts';
import { lowWater } from './lowWater.ts';
import { zoneOf } from './zoneOf.ts';

/** Measured, but no zones were drawn. */
export const noZones: ComparisonRecord = { ...lowWater, zones: [], toneCurves: [], warnings: [] };

/** Half a sheet without a solid on either side: much is null. */
export const partial: ComparisonRecord = {
  ...lowWater,
  warnings: [
    { code: 'partial', message: 'The sheet covers 52 % of the work rectangle.' },
    { code: 'no-solid', message: 'No place on the print is dark enough to count as a full film of ink.' },
    {
      code: 'glare',
      message: 'A bright patch near the top right corner of the stone hides what is under it.',
    },
  ],
  ground: {
    stone: { origin: 'white-sheet', limit: null },
    proof: { origin: 'bare-places', limit: 'An even tint over the whole sheet cannot be seen.' },
  },
  response: {
    stone: { origin: 'standard-curve', residual: null },
    proof: { origin: 'standard-curve', residual: null },
  },
  solid: { stone: { origin: 'chips', darkness: 0.93, low: 0.9, high: 0.96 }, proof: null },
  strength: { stone: { value: 1.15, low: 1, high: 1.4, basis: 'measured', warnings: [] }, proof: null },
  zones: [
    zoneOf('sky', 'sky wash', 'wash', 0.24, null, 'undecided', 0.03, 0),
    zoneOf('bank', 'mudbank', 'crayon', 0.62, null, 'undecided', 0.03, 0.48),
    zoneOf('reeds', 'reeds', 'autographic ink, third bottle', 0.31, null, 'undecided', 0.03, 1),
    zoneOf('post', 'post', 'solid', null, null, 'undecided', 0.03, 1),
  ],
  toneCurves: [],
  areas: { lostFraction: null, filledFraction: null, scumFraction: null, covered: 0.52 },
};
