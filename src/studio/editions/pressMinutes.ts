import type { Measured } from '../../foundation/measured.ts';
import { quantile } from '../../science/statistics/quantile.ts';

/** With two people, minutes: laying out, one impression, gumming down and cleaning. From memory, varies. */
const fromMemory = { layOut: [30, 60], impression: [4, 8], close: [20, 40] } as const;
/** From so many intervals on this room's own pace is taken. Our rule. */
const fewestIntervals = 10;

/**
 * Minutes at the press with two people for a number of impressions: laying out, printing, closing down. The pace is this
 * room's own once its ledgers hold ten intervals (range: its quartiles); the rest from memory.
 */
export function pressMinutes(impressions: number, intervalsMinutes: readonly number[]): Measured {
  const own = intervalsMinutes.length >= fewestIntervals;
  const [least, most] = own
    ? [quantile(intervalsMinutes, 0.25), quantile(intervalsMinutes, 0.75)]
    : fromMemory.impression;
  const usual = own ? quantile(intervalsMinutes, 0.5) : (least + most) / 2;
  const rest = [fromMemory.layOut, fromMemory.close];
  const sum = (side: 0 | 1) => rest.reduce((total, range) => total + range[side], 0);
  return {
    value: (sum(0) + sum(1)) / 2 + impressions * usual,
    low: sum(0) + impressions * least,
    high: sum(1) + impressions * most,
    basis: own ? 'this room' : 'memory',
    warnings: own
      ? [
          `Pace from ${intervalsMinutes.length} intervals in this room’s ledgers; laying out and closing down from memory.`,
        ]
      : ['From memory, varies: the ledger will tell this room’s own pace.'],
  };
}
