import type { SeriesTone } from '../../records/proofSeries.ts';
import { shareAt } from './approach.ts';
import { changeRange } from './approachRange.ts';
import { darknessWords } from './seriesWords.ts';
import type { FittedSeries } from './toneCourses.ts';

/** Steadiness looks two pulls ahead; an edition is longer. Our rule. */
const ahead = 10;

/**
 * Tones that are steady over the next two pulls and yet climb or pale so surely that ten more pulls pass the tolerance: one
 * sentence each.
 * @param tail of the interval that must leave out "no change".
 */
export function creepWarnings(
  { fits, doubt }: Pick<FittedSeries, 'fits' | 'doubt'>,
  tolerance: number,
  tail: number,
): string[] {
  return [...fits].flatMap(([tone, fit]) => {
    const { low, high } = changeRange(fit, doubt(tail));
    const { approach, rise } = fit.best;
    const further = rise * (shareAt(approach, approach.first + approach.span + ahead) - 1);
    return (low > 0 || high < 0) && Math.abs(further) > tolerance ? [sentence(tone, further)] : [];
  });
}

function sentence(tone: SeriesTone, further: number): string {
  const way = further > 0 ? 'climb' : 'pale';
  return `Steady over two pulls, yet the ${tone} still ${way}: by about ${darknessWords(Math.abs(further))} over the next ten, more than the tolerance.`;
}
