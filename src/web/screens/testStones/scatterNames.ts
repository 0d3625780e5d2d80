import type { TrialPower } from '../../../records/trialDesign.ts';

/** How much stones scatter, in words. */
export const scatterNames = {
  low: 'low',
  middle: 'middling',
  high: 'high',
  'this room': 'this room’s own',
} as const satisfies Record<TrialPower['of'], string>;
