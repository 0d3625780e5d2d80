import type { CoverageInterval } from '../../../records/comparison.ts';
import type { CameraReading, Hold, HoldRule } from '../../../records/patchReading.ts';
import type { PatchIntention } from '../../../records/testStone.ts';

/** Our rule, on the thresholds of every comparison (lost, filled, held, scum), stricter where little was drawn; no source. */
export const holdRule: HoldRule = {
  drawnAtLeast: 0.04,
  lostAtMost: 0.4,
  weakBeyond: { atMost: 0.05, share: 0.25 },
  filled: { drawnAtMost: 0.85, printedAtLeast: 0.93 },
  scumAtLeast: 0.04,
};

const nothingRead = { kept: null, hold: null, least: null, most: null, mark: null } as const;

/**
 * What became of one patch on one print.
 * @param drawn coverage 0..1 with its 95 % interval; null where it could not be read.
 * @param printed likewise, on the part of the patch that the sheet covers.
 */
export function readHold(
  intention: PatchIntention,
  drawn: CoverageInterval | null,
  printed: CoverageInterval | null,
  rule: HoldRule = holdRule,
): CameraReading {
  const read = { drawn, printed };
  if (drawn === null) return { ...read, ...nothingRead, why: 'It could not be read on the stone.' };
  if (printed === null)
    return { ...read, ...nothingRead, why: 'The sheet does not cover it, or it could not be read there.' };
  if (intention === 'stop-out')
    return {
      ...read,
      ...nothingRead,
      mark: printed.coverage >= rule.scumAtLeast ? 'printed' : 'bare',
      why: null,
    };
  const kept = drawn.coverage < rule.drawnAtLeast ? null : keptOf(drawn, printed);
  if (intention === 'guide') {
    const gone = printed.coverage <= rule.lostAtMost * drawn.coverage;
    return { ...read, ...nothingRead, kept, mark: gone ? 'vanished' : 'shows', why: null };
  }
  if (kept === null)
    return {
      ...read,
      ...nothingRead,
      why: `It is drawn fainter than ${Math.round(rule.drawnAtLeast * 100)} % on the stone: too faint to tell.`,
    };
  const at = (d: number, p: number) => holdAt(d, p, rule);
  const { coverage: d } = drawn;
  const ends = [
    at(drawn.high, printed.low),
    at(drawn.low, printed.high),
    at(d, printed.low),
    at(d, printed.high),
  ];
  const hold = at(d, printed.coverage);
  return {
    ...read,
    kept,
    hold,
    least: lesser([hold, ...ends]),
    most: greater([hold, ...ends]),
    mark: null,
    why: null,
  };
}

/** The rule at one pair of coverages, both 0..1. */
export function holdAt(drawn: number, printed: number, rule: HoldRule = holdRule): Hold {
  if (drawn <= rule.filled.drawnAtMost && printed >= rule.filled.printedAtLeast) return 'filled';
  if (printed <= rule.lostAtMost * drawn) return 'lost';
  const { atMost, share } = rule.weakBeyond;
  return printed < drawn - Math.min(atMost, share * drawn) ? 'weak' : 'held';
}

/** Printed over drawn; errors of both by the delta method on half their intervals, which are taken as independent. */
function keptOf(drawn: CoverageInterval, printed: CoverageInterval): CameraReading['kept'] {
  const value = printed.coverage / drawn.coverage;
  const half = (of: CoverageInterval) => (of.high - of.low) / 2 / drawn.coverage;
  const wide = Math.hypot(half(printed), value * half(drawn));
  return { value, low: Math.max(0, value - wide), high: value + wide };
}

const order: Record<Hold, number> = { lost: 0, weak: 1, held: 2, filled: 3 };

function lesser(holds: readonly Hold[]): Hold {
  return holds.reduce((least, hold) => (order[hold] < order[least] ? hold : least));
}

function greater(holds: readonly Hold[]): Hold {
  return holds.reduce((most, hold) => (order[hold] > order[most] ? hold : most));
}
