import type { Measured } from '../../foundation/measured.ts';
import type { RoomPast } from '../../records/editionPlan.ts';
import { wilson } from '../../science/statistics/proportionInterval.ts';

/** Spoiled sheets as a share of the edition until this room has its own. Our rule. */
export const startingSpoilage = 0.3;
/** From so many impressions on the room's own rate is taken. Our rule. */
const fewestImpressions = 20;

/**
 * How many sheets are spoiled for every sound one: this room's own rate from its ledgers, 30 % until they hold 20
 * impressions.
 * @returns a share of the sound prints, not of all sheets; its 95 % interval is Wilson's on spoiled among all, turned into
 *   spoiled for each sound one (infinite where all might spoil).
 */
export function spoilageRate(past: Pick<RoomPast, 'impressions' | 'spoiled'>): EditionSpoilage {
  const { impressions, spoiled } = past;
  if (impressions < fewestImpressions || spoiled === impressions) {
    const warnings =
      impressions === 0
        ? ['30 % until this room has printed: our rule.']
        : [`30 %, our rule: this room’s ${impressions} logged prints are too few to tell.`];
    const value = startingSpoilage;
    return { value, low: value, high: value, basis: 'common practice', warnings, impressions };
  }
  const { low, high } = wilson(spoiled, impressions, 0.95);
  return {
    value: forEachSound(spoiled / impressions),
    low: forEachSound(low),
    high: forEachSound(high),
    basis: 'this room',
    warnings: [],
    impressions,
  };
}

type EditionSpoilage = Measured & { readonly impressions: number };

function forEachSound(share: number): number {
  return share / (1 - share);
}
