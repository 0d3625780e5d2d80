import type { Measured } from '../../foundation/measured.ts';
import { measured } from '../../imaging/tone/printTones.ts';
import { coverageFactor, type Reading, zoneChange } from '../../imaging/tone/zoneChange.ts';
import { type ComparisonParameters, defaultParameters } from '../../records/comparison.ts';
import type { PairedTone, ToneChange } from '../../records/pullTones.ts';

/** By what two tones are compared. */
export interface PairRule {
  readonly kind: 'pulls' | 'stone';
  /** What a tone is divided by, with its standard deviation: a full film for coverage, 1 for darkness. */
  readonly scale: { readonly partner: Reading; readonly pull: Reading };
  readonly within: number;
  /** Whether both photographs know how light or dark they are as such; else nothing is said to have held. */
  readonly absolute: boolean;
  /** Whether they may be compared at all: another paper or age may not. */
  readonly comparable: boolean;
}

/** One place on both, with what became of it. */
export function pairTones(partner: Measured | null, pull: Measured | null, rule: PairRule): PairedTone {
  const before = partner && readingOf(partner, rule.scale.partner);
  const after = pull && readingOf(pull, rule.scale.pull);
  const shown = {
    partner: before && measured(before.value, before.deviation),
    pull: after && measured(after.value, after.deviation),
  };
  if (!before || !after) return { ...shown, difference: null, change: 'undecided' };
  const deviation = Math.hypot(before.deviation, after.deviation);
  const difference = measured(after.value - before.value, deviation);
  if (!rule.comparable) return { ...shown, difference, change: 'undecided' };
  const change =
    rule.kind === 'stone' ? zoneChange(before, after, parametersOf(rule)) : changeOf(difference, rule.within);
  return { ...shown, difference, change: change === 'held' && !rule.absolute ? 'undecided' : change };
}

function parametersOf({ within }: PairRule): ComparisonParameters {
  return { ...defaultParameters, heldWithin: within, sizeMm: [1, 1] };
}

/** Held within the tolerance, lighter or darker surely beyond it, else undecided. */
function changeOf({ value, low, high }: Measured, within: number): ToneChange {
  if (low > within) return 'darker';
  if (high < -within) return 'lighter';
  return Math.abs(value) <= within ? 'held' : 'undecided';
}

function readingOf({ value, low, high }: Measured, scale: Reading): Reading {
  const own = (high - low) / (2 * coverageFactor);
  const over = value / scale.value;
  return { value: over, deviation: Math.hypot(own, over * scale.deviation) / scale.value };
}
