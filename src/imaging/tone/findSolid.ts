import { median, medianAbsoluteDeviation, quantile } from '../../science/statistics/quantile.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import { gaussianBlur } from '../operations/gaussianBlur.ts';
import type { Frame } from '../raster.ts';

/** A full film of ink or drawing matter as found on one object. */
export interface FoundSolid {
  /** Darkness 0..1. */
  readonly darkness: number;
  /** Standard deviation of it, from how the darkest places differ. */
  readonly error: number;
  readonly areaMm2: number;
}

/** Smaller dark places are lines or specks, not a film: our rule. */
const leastAreaMm2 = 15;
/** The darkest level is looked for on one pixel in so many. */
const sampleStep = 7;
/** Specks of ground make more than half of a printed film look lighter: its upper quartile is nearer to a full one. */
const filmShare = 0.75;
/** A place belongs to the darkest while it lies within this of the darkest level: our rule. */
const withinDarkness = 0.06;

/**
 * Estimates the darkness of a full film from the darkest connected places: their upper quartile, since specks of ground only
 * ever make a film look lighter; half of what it stands above the median is carried as doubt.
 * @param darkness plane of the frame; NaN where there is nothing.
 * @param counts which pixels may be looked at (the work rectangle under the sheet).
 * @returns null where no connected dark place is large enough.
 */
export function findSolid(darkness: Float32Array, counts: Uint8Array, frame: Frame): FoundSolid | null {
  const { widthPx, heightPx, pxPerMm } = frame;
  const filled = new Float32Array(darkness.length);
  for (let i = 0; i < filled.length; i++)
    if (counts[i] && !Number.isNaN(darkness[i]!)) filled[i] = darkness[i]!;
  const smooth = gaussianBlur(filled, widthPx, heightPx, 0.4 * pxPerMm);
  const sample: number[] = [];
  for (let i = 0; i < smooth.length; i += sampleStep) if (counts[i]) sample.push(smooth[i]!);
  // The level that only 15 mm² exceed: darker than that there is no film to speak of.
  const share = Math.min(0.5, (leastAreaMm2 * pxPerMm * pxPerMm) / Math.max(1, sample.length * sampleStep));
  const top = quantile(sample, 1 - share);
  const dark = new Uint8Array(smooth.length);
  for (let i = 0; i < dark.length; i++) if (counts[i] && smooth[i]! >= top - withinDarkness) dark[i] = 1;
  const core = erode(dark, widthPx, heightPx, Math.round(0.5 * pxPerMm));
  const places = connectedPlaces(core, widthPx, heightPx).filter(
    (place) => place.pixels.length >= (leastAreaMm2 * pxPerMm * pxPerMm) / 2,
  );
  if (places.length === 0) return null;
  const levels = places.map((place) => median(place.pixels.map((i) => darkness[i]!)));
  const order = levels.map((_, i) => i).toSorted((a, b) => levels[b]! - levels[a]!);
  const darkest = order.filter((i) => levels[i]! >= levels[order[0]!]! - 0.02);
  const pixels = darkest.flatMap((i) => places[i]!.pixels);
  const values = pixels.map((i) => darkness[i]!);
  const film = quantile(values, filmShare);
  const specks = film - median(values);
  const spread = medianAbsoluteDeviation(values);
  return {
    darkness: film,
    error: Math.hypot(0.0015, specks / 2, spread / Math.sqrt(Math.max(1, pixels.length / 16))),
    areaMm2: pixels.length / (pxPerMm * pxPerMm),
  };
}

function erode(mask: Uint8Array, width: number, height: number, radius: number): Uint8Array {
  let current = mask;
  for (let round = 0; round < radius; round++) {
    const next = new Uint8Array(mask.length);
    for (let y = 1; y < height - 1; y++) {
      for (let x = 1; x < width - 1; x++) {
        const i = y * width + x;
        next[i] = current[i]! & current[i - 1]! & current[i + 1]! & current[i - width]! & current[i + width]!;
      }
    }
    current = next;
  }
  return current;
}
