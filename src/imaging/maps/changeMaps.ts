import type { ComparisonParameters } from '../../records/comparison.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import type { Frame, Mask } from '../raster.ts';
import type { CoverageMap } from './coverageMaps.ts';
import { significantPlaces } from './significantPlaces.ts';

/** The most that the stone's mottle is allowed for in telling bare ground. */
const mottle = 0.015;

export interface ChangeMaps {
  readonly lost: Mask;
  readonly filled: Mask;
  readonly scum: Mask;
  /** Pixels of the maps at which both objects could be read. */
  readonly seenPx: number;
}

/** How far, in coverage, a pixel passes its limit (positive: it does), and the standard deviation of that. */
interface Excess {
  readonly passes: boolean;
  readonly by: number;
  readonly deviation: number;
}

/**
 * Where marks were lost, where tones closed and where bare ground took ink. A place is claimed when it passes the limits
 * throughout and some of it does so beyond doubt (false discoveries held to q), and when it is large enough.
 */
export function changeMaps(
  drawn: CoverageMap,
  printed: CoverageMap,
  parameters: ComparisonParameters,
): ChangeMaps {
  const { lost, filled, scum } = parameters;
  const claim = (excess: (d: number, p: number, sd: number, sp: number) => Excess): Mask => {
    const count = drawn.data.length;
    const passes = new Uint8Array(count);
    const scores = new Float32Array(count).fill(Number.NaN);
    for (let i = 0; i < count; i++) {
      const d = drawn.data[i]!;
      const p = printed.data[i]!;
      if (Number.isNaN(d) || Number.isNaN(p)) continue;
      const found = excess(d, p, drawn.deviation[i] || 0.01, printed.deviation[i] || 0.01);
      passes[i] = found.passes ? 1 : 0;
      scores[i] = found.by / found.deviation;
    }
    const sure = significantPlaces(scores, passes, parameters.falseDiscoveryRate);
    return claimedPlaces(passes, sure, drawn, parameters.smallestAreaMm2);
  };
  let seenPx = 0;
  for (let i = 0; i < drawn.data.length; i++) {
    if (!Number.isNaN(drawn.data[i]!) && !Number.isNaN(printed.data[i]!)) seenPx++;
  }
  return {
    lost: claim((d, p, sd, sp) => ({
      passes: d >= lost.drawnAtLeast && p <= lost.keptAtMost * d,
      by: lost.keptAtMost * d - p,
      deviation: Math.hypot(sp, lost.keptAtMost * sd),
    })),
    filled: claim((d, p, sd, sp) => ({
      passes: d >= filled.drawnAtLeast && d <= filled.drawnAtMost && p >= filled.printedAtLeast,
      by: Math.min(p - filled.printedAtLeast + 0.02, (filled.drawnAtMost - d) * 0.5 + 0.02),
      deviation: Math.hypot(sp, 0.5 * sd),
    })),
    scum: claim((d, p, sd, sp) => ({
      // The stone's own mottle passes for a tone of a per cent or so: that is no drawing.
      passes: d <= scum.drawnAtMost + Math.min(mottle, sd) && p >= scum.printedAtLeast,
      by: p - 0.5 * scum.printedAtLeast,
      deviation: sp,
    })),
    seenPx,
  };
}

/** Of the places that pass, those with a sure pixel in them and of at least the smallest area. */
export function claimedPlaces(
  passes: Uint8Array,
  sure: Uint8Array,
  map: Frame,
  smallestAreaMm2: number,
): Mask {
  const data = new Uint8Array(passes.length);
  const least = smallestAreaMm2 * map.pxPerMm * map.pxPerMm;
  for (const place of connectedPlaces(passes, map.widthPx, map.heightPx)) {
    if (place.pixels.length < least || !place.pixels.some((i) => sure[i])) continue;
    for (const i of place.pixels) data[i] = 255;
  }
  return { widthPx: map.widthPx, heightPx: map.heightPx, pxPerMm: map.pxPerMm, originMm: map.originMm, data };
}

/** Share of what could be seen that a mask claims, 0..1; null where nothing could be seen. */
export function claimedFraction(mask: Mask, seenPx: number): number | null {
  if (seenPx === 0) return null;
  let claimed = 0;
  for (const value of mask.data) if (value) claimed++;
  return claimed / seenPx;
}
