import type { Spent } from '../../records/bench.ts';
import type { Moment } from './eventMoments.ts';

/** How far a tap lies from what it marks, seconds: our rule. */
const tapSeconds = 2;
/** The same across two clocks, where sending counts too: our rule. */
const acrossClocksSeconds = 5;
/** What is remembered may be wrong by this share: our rule. */
export const rememberedShare = 0.5;

/** The time between two taps. */
export function measuredSpent(from: Moment, to: Moment): Spent {
  const seconds = Math.max(0, to.ms - from.ms) / 1000;
  const oneClock = from.clock === to.clock;
  const off = oneClock ? tapSeconds : acrossClocksSeconds;
  return { seconds, low: Math.max(0, seconds - off), high: seconds + off, how: 'measured', oneClock };
}

/** A time that was told afterwards. @param seconds 0 or more. */
export function rememberedSpent(seconds: number): Spent {
  const [low, high] = [seconds * (1 - rememberedShare), seconds * (1 + rememberedShare)];
  return { seconds, low, high, how: 'remembered', oneClock: true };
}
