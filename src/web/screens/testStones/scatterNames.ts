import type { TrialPower } from '../../../records/trialDesign.ts';
import { say } from '../../words/say.ts';

/** How much stones scatter, in words. */
export const scatterNames = {
  low: say('low'),
  middle: say('middling'),
  high: say('high'),
  'this room': say('this room’s own'),
} as const satisfies Record<TrialPower['of'], string>;
