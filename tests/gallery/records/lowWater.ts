import {
  type ComparisonRecord,
  comparisonSchema,
  defaultParameters,
} from '../../../src/records/comparison.ts';
import { zoneOf } from './zoneOf.ts';

/** "Low Water" from the invented stone room: nineteen zones in which every change occurs. */
export const lowWater: ComparisonRecord = {
  schema: comparisonSchema,
  engine: 'stonetone gallery',
  parameters: { sizeMm: [300, 400], ...defaultParameters },
  verdict: 'ok',
  reason: null,
  warnings: [
    {
      code: 'standard-curve',
      message:
        'No grey chips were outlined on the photograph of the print, so the camera was taken at its word.',
    },
    {
      code: 'scum-local-only',
      message: "The print's ground was taken from inside the work rectangle.",
    },
  ],
  registration: {
    kind: 'homography+stretch',
    turn: 180,
    mirrored: true,
    residualMm: { median: 0.008, p90: 0.041 },
    samples: [],
  },
  ground: {
    stone: { origin: 'outside', limit: null },
    proof: { origin: 'bare-places', limit: 'An even tint over the whole sheet cannot be seen.' },
  },
  response: {
    stone: { origin: 'chips', residual: 0.004 },
    proof: { origin: 'standard-curve', residual: null },
  },
  solid: {
    stone: { origin: 'own-solid', darkness: 0.93, low: 0.921, high: 0.939 },
    proof: { origin: 'own-solid', darkness: 0.951, low: 0.943, high: 0.959 },
  },
  strength: {
    stone: { value: 1.15, low: 1.1, high: 1.21, basis: 'measured', warnings: [] },
    proof: { value: 1.31, low: 1.24, high: 1.39, basis: 'measured', warnings: [] },
  },
  zones: [
    zoneOf('A1', 'sky, first veil', 'wash', 0.104, 0.012, 'lost', 0.008),
    zoneOf('A2', 'sky, second veil', 'wash', 0.118, 0.031, 'lost', 0.009),
    zoneOf('A3', 'sky, cloud edge', 'wash', 0.16, 0.09, 'lighter'),
    zoneOf('A4', 'sky, under the cloud', 'wash', 0.27, 0.24, 'held'),
    zoneOf('A5', 'sky at the horizon', 'wash', 0.44, 0.46, 'held'),
    zoneOf('A6', 'pool', 'wash', 0.68, 0.81, 'darker'),
    zoneOf('B1', 'mud, dry crest', 'crayon', 0.08, 0.07, 'held', 0.011),
    zoneOf('B2', 'mud, far bank', 'crayon', 0.15, 0.14, 'held'),
    zoneOf('B3', 'mud, near bank', 'crayon', 0.24, 0.27, 'undecided', 0.034),
    zoneOf('B4', 'mud, ripples', 'crayon', 0.38, 0.4, 'held'),
    zoneOf('B5', 'mud, wet channel', 'crayon', 0.55, 0.6, 'undecided', 0.041),
    zoneOf('B6', 'mud, foot of the post', 'crayon', 0.7, 0.84, 'darker'),
    zoneOf('B7', 'hollow under the bank', 'crayon', 0.82, 0.962, 'filled'),
    zoneOf('C1', 'reeds, tips', 'pen', 0.11, 0.1, 'held', 0.014),
    zoneOf('C2', 'reeds, stand', 'pen', 0.31, 0.3, 'held', 0.016),
    zoneOf('C3', 'reeds, foot', 'pen', 0.48, 0.5, 'undecided', 0.038),
    zoneOf('D1', 'post', 'solid', 0.985, 0.991, 'held', 0.009),
    zoneOf('E1', 'moon, stopped out', 'blank', 0.004, 0.003, 'held', 0.006),
    zoneOf('E2', 'lower margin', 'blank', 0.005, 0.062, 'scum', 0.008),
  ],
  toneCurves: [
    {
      medium: 'wash',
      points: [
        { drawn: 0.104, printed: 0.012, low: 0.002, high: 0.022 },
        { drawn: 0.118, printed: 0.031, low: 0.02, high: 0.042 },
        { drawn: 0.16, printed: 0.09, low: 0.076, high: 0.104 },
        { drawn: 0.27, printed: 0.24, low: 0.226, high: 0.254 },
        { drawn: 0.44, printed: 0.46, low: 0.446, high: 0.474 },
        { drawn: 0.68, printed: 0.81, low: 0.796, high: 0.824 },
      ],
      lossPoint: 0.13,
      fillPoint: null,
    },
    {
      medium: 'crayon',
      points: [
        { drawn: 0.08, printed: 0.07, low: 0.057, high: 0.083 },
        { drawn: 0.15, printed: 0.14, low: 0.126, high: 0.154 },
        { drawn: 0.24, printed: 0.27, low: 0.229, high: 0.311 },
        { drawn: 0.38, printed: 0.4, low: 0.386, high: 0.414 },
        { drawn: 0.55, printed: 0.6, low: 0.551, high: 0.649 },
        { drawn: 0.7, printed: 0.84, low: 0.826, high: 0.854 },
        { drawn: 0.82, printed: 0.962, low: 0.948, high: 0.976 },
      ],
      lossPoint: null,
      fillPoint: 0.79,
    },
    {
      medium: 'pen',
      points: [
        { drawn: 0.11, printed: 0.1, low: 0.083, high: 0.117 },
        { drawn: 0.31, printed: 0.3, low: 0.281, high: 0.319 },
        { drawn: 0.48, printed: 0.5, low: 0.454, high: 0.546 },
      ],
      lossPoint: null,
      fillPoint: null,
    },
  ],
  areas: { lostFraction: 0.062, filledFraction: 0.013, scumFraction: 0.0004, covered: 1 },
  maps: { lost: 'lost.png', filled: 'filled.png', scum: 'scum.png', pxPerMm: 4 },
};
