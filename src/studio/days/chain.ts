import type { NeededStep } from './daySteps.ts';
import { earliestPlace, latestPlace, type Need, type Placed } from './placing.ts';
import type { Presence } from './presence.ts';

const minuteMs = 60_000;

/** With which end of every range one reckons. */
export type Pace = 'longest' | 'shortest';

interface Link {
  /** Null where nobody knows how long it takes. */
  readonly need: Need | null;
  /** To wait after it, ms. */
  readonly waitMs: number;
}

/** A chain of steps, each begun when the one before it has ended and its wait is over. */
export type Chain = readonly Link[];

/** The longest pace waits the best times, the shortest the least. */
export function chainOf(steps: readonly NeededStep[], pace: Pace): Chain {
  return steps.map(({ people, hands, mayBreak, wait }) => {
    const minutes = pace === 'longest' ? hands.highMinutes : hands.lowMinutes;
    const waited = pace === 'longest' ? wait?.wantedMinutes : wait?.leastMinutes;
    return {
      need: minutes === null ? null : { people, mayBreak, lengthMs: Math.ceil(minutes) * minuteMs },
      waitMs: (waited ?? 0) * minuteMs,
    };
  });
}

/** A step of a chain with what can be said of it. */
export interface ChainPlace {
  readonly placed: Placed | null;
  /** Going back: by when it must have ended. Going on: from when it may begin. Null where that isn't known. */
  readonly bound: number | null;
}

/**
 * Every step as late as it can so that the last has ended by a moment. Since a step that starts later leaves those
 * before it no less time, taking each as late as it can is the best there is. From the first that can't be placed, or
 * whose length isn't known, back to the start nothing can be said.
 * @param endBy ms since 1970 UTC; so are the places.
 */
export function backFrom(people: readonly Presence[], chain: Chain, endBy: number): readonly ChainPlace[] {
  const places: ChainPlace[] = [];
  let bound: number | null = endBy;
  for (let index = chain.length - 1; index >= 0; index--) {
    const { need } = chain[index]!;
    const placed: Placed | null = need && bound !== null ? latestPlace(people, need, bound) : null;
    places.unshift({ placed, bound });
    bound = placed && placed.start - (chain[index - 1]?.waitMs ?? 0);
  }
  return places;
}

/** Every step as early as it can from a moment on; best likewise, and silent after what can't be placed. */
export function onFrom(people: readonly Presence[], chain: Chain, ready: number): readonly ChainPlace[] {
  const places: ChainPlace[] = [];
  let bound: number | null = ready;
  for (const { need, waitMs } of chain) {
    const placed: Placed | null = need && bound !== null ? earliestPlace(people, need, bound) : null;
    places.push({ placed, bound });
    bound = placed && placed.end + waitMs;
  }
  return places;
}

/** Before when the last step can't end, taking what nobody knows for no time at all; null where it never can. */
export function soonestEnd(people: readonly Presence[], chain: Chain, ready: number): number | null {
  let [bound, end] = [ready, ready];
  for (const { need, waitMs } of chain) {
    if (need) {
      const placed = earliestPlace(people, need, bound);
      if (!placed) return null;
      end = placed.end;
    }
    bound = Math.max(bound, end) + waitMs;
  }
  return end;
}
