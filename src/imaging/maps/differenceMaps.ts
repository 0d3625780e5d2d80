import type { Mask } from '../raster.ts';
import { claimedPlaces } from './changeMaps.ts';
import type { CoverageMap } from './coverageMaps.ts';
import { significantPlaces } from './significantPlaces.ts';

export interface DifferenceMaps {
  readonly lighter: Mask;
  readonly darker: Mask;
  /** Pixels at which both could be read. */
  readonly seenPx: number;
}

export interface DifferenceRule {
  /** What does not count as a change. */
  readonly within: number;
  /** What σ of one reading adds, and anything else common to both. */
  readonly floor: number;
  readonly falseDiscoveryRate: number;
  readonly smallestAreaMm2: number;
}

/**
 * Where one tone map is surely lighter or darker than another of the same frame: beyond `within`, false discoveries held to
 * a rate, places of at least the smallest area.
 * @param scale what each map's tones are divided by.
 */
export function differenceMaps(
  before: CoverageMap,
  after: CoverageMap,
  scale: { readonly before: number; readonly after: number },
  rule: DifferenceRule,
): DifferenceMaps {
  const count = before.data.length;
  const difference = new Float32Array(count);
  const deviation = new Float32Array(count);
  let seenPx = 0;
  for (let i = 0; i < count; i++) {
    difference[i] = after.data[i]! / scale.after - before.data[i]! / scale.before;
    const own = [before.deviation[i]! / scale.before, after.deviation[i]! / scale.after];
    deviation[i] = Math.hypot(own[0] || 0.01, own[1] || 0.01, rule.floor * Math.SQRT2);
    if (!Number.isNaN(difference[i]!)) seenPx++;
  }
  const claim = (sign: 1 | -1): Mask => {
    const scores = difference.map((value, i) => (sign * value - rule.within) / deviation[i]!);
    const passes = Uint8Array.from(difference, (value) => (sign * value > rule.within ? 1 : 0));
    const sure = significantPlaces(scores, passes, rule.falseDiscoveryRate);
    return claimedPlaces(passes, sure, before, rule.smallestAreaMm2);
  };
  return { lighter: claim(-1), darker: claim(1), seenPx };
}
