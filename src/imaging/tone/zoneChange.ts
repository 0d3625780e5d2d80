import type { Change, ComparisonParameters } from '../../records/comparison.ts';

/** Two-sided 95 %. */
export const coverageFactor = 1.96;

/** A zone's coverage with its standard deviation. */
export interface Reading {
  readonly value: number;
  readonly deviation: number;
}

/** A zone lighter than the map's limit still counts as lost when it was surely drawn and surely is gone: our rule. */
const faintest = 0.03;

/**
 * What became of a zone. Lost, filled and scum need the reading to pass their limit by its own uncertainty;
 * held is within the limit; lighter and darker are significantly outside it; else undecided.
 */
export function zoneChange(drawn: Reading, printed: Reading, parameters: ComparisonParameters): Change {
  const { lost, filled, scum, heldWithin } = parameters;
  const difference = printed.value - drawn.value;
  const doubt = coverageFactor * Math.hypot(drawn.deviation, printed.deviation);
  const surelyDrawn =
    drawn.value >= lost.drawnAtLeast || drawn.value - coverageFactor * drawn.deviation >= faintest;
  const lostDoubt = coverageFactor * Math.hypot(printed.deviation, lost.keptAtMost * drawn.deviation);
  if (surelyDrawn && printed.value <= lost.keptAtMost * drawn.value) {
    const surely = printed.value + lostDoubt <= lost.keptAtMost * drawn.value;
    if (surely || printed.value <= 0.2 * drawn.value) return 'lost';
  }
  const mayFill = drawn.value >= filled.drawnAtLeast && drawn.value <= filled.drawnAtMost;
  if (mayFill && printed.value >= filled.printedAtLeast) return 'filled';
  if (
    drawn.value <= scum.drawnAtMost + coverageFactor * drawn.deviation &&
    printed.value >= scum.printedAtLeast
  ) {
    if (difference - doubt > 0.5 * scum.printedAtLeast) return 'scum';
  }
  if (Math.abs(difference) <= heldWithin) return 'held';
  if (Math.abs(difference) - doubt > heldWithin) return difference < 0 ? 'lighter' : 'darker';
  return 'undecided';
}
