import type { TrialWish } from '../../../records/trialDesign.ts';
import { stoneShape } from './drawnTreatments.ts';

/** Minutes of somebody's hands, from memory: they differ between rooms, and rank layouts rather than plan a day. */
const minutes = {
  /** Graining, border, powder, washout, roll-up and three prints. */
  stone: 90,
  /** Drawing one patch. */
  patch: 4,
  /** Laying, moving and lifting one etch. */
  etch: 6,
} as const;

/** What a trial costs. */
export interface TrialCost {
  readonly patches: number;
  /** How many areas are etched each by itself, over all stones. */
  readonly etched: number;
  readonly minutes: number;
}

/**
 * What a trial costs in patches and in minutes of hands. What is hard to vary is given to each strip of a split plot at once; in the
 * other layouts every patch gets its own.
 */
export function trialCost(wish: TrialWish): TrialCost {
  const { across, down, perBlock } = stoneShape(wish);
  const patches = wish.stones * across * down * perBlock;
  const split = (wish.layout ?? 'split-plot') === 'split-plot';
  const etched = wish.whole === null ? wish.stones : split ? wish.stones * across * down : patches;
  return {
    patches,
    etched,
    minutes: wish.stones * minutes.stone + patches * minutes.patch + etched * minutes.etch,
  };
}
