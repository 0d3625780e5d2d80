import type { ComparisonWarning } from '../../records/comparison.ts';
import { median } from '../../science/statistics/quantile.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import { gaussianBlur } from '../operations/gaussianBlur.ts';
import { photographPxPerFramePx } from '../operations/mapPoint.ts';
import { sampleGrey } from '../operations/sampleLinear.ts';
import type { Frame } from '../raster.ts';
import type { SideTone } from './readSide.ts';
import type { SideInput } from './sideInput.ts';

/** Limits of what is warned of: our rules, set on rendered photographs. */
export const qualityLimits = {
  /** Share of the sheet with a clipped channel from which tones suffer. */
  clipped: 0.02,
  /** Share from which no tone is given at all. */
  noTone: 0.2,
  /** Photograph px to the millimetre. */
  pxPerMm: 3,
  /** Fine structure against coarser structure; below it a picture is blurred whatever it shows. */
  sharpness: 0.05,
  /** Below this it is blurred if its partner is so much sharper: a wash alone is soft, a drawing beside its print is not. */
  softness: 0.15,
  besidePartner: 0.3,
  glareMm2: 60,
  /** Ground light of the strongest channel over the weakest: paper is nearly white, limestone is yellow. */
  cast: { stone: 3.2, proof: 2.2 },
} as const;

const words = { stone: 'stone', proof: 'print' } as const;

/** What is wrong with one photograph as a photograph, in words with what to do. */
export function pictureWarnings(input: SideInput, side: SideTone, sharp: Sharpness): ComparisonWarning[] {
  const name = words[input.side];
  const found: ComparisonWarning[] = [];
  if (side.clipped > qualityLimits.clipped) {
    found.push({
      code: 'overexposed',
      message: `The photograph of the ${name} is overexposed on ${Math.round(side.clipped * 100)} % of the picture: tones there are lost. Take it again with less exposure.`,
    });
  }
  const pxPerMm = photographPxPerFramePx(input.map, side.frame) * side.frame.pxPerMm;
  if (pxPerMm < qualityLimits.pxPerMm) {
    found.push({
      code: 'few-pixels',
      message: `The photograph of the ${name} has only ${pxPerMm.toFixed(1)} px per millimetre: fine marks can't be told. Come closer, or use the full resolution.`,
    });
  }
  if (side.clipped <= qualityLimits.noTone && isBlurred(sharp)) {
    found.push({
      code: 'blurred',
      message: `The photograph of the ${name} is blurred: steady the camera, use the timer, and take it again.`,
    });
  }
  if (glareAreaMm2(side) > qualityLimits.glareMm2) {
    found.push({
      code: 'glare',
      message: `The ${name} shines in the photograph: move the lamps to 45° or fan it dry, and take it again.`,
    });
  }
  if (castOf(side) > qualityLimits.cast[input.side]) {
    found.push({
      code: 'cast',
      message: `The light on the ${name} is strongly coloured: one channel holds hardly any light. Use one kind of lamp, no window.`,
    });
  }
  if (side.response.residual !== null && side.response.residual > 0.02) {
    found.push({
      code: 'chips-misfit',
      message: `The chips on the photograph of the ${name} don't fit their reflectances (misfit ${side.response.residual.toFixed(3)}): check their outlines, values and shadows.`,
    });
  }
  return found;
}

/** How sharp this photograph and its partner are, each on its own scale. */
export interface Sharpness {
  readonly own: number;
  readonly partner: number;
}

function isBlurred({ own, partner }: Sharpness): boolean {
  return (
    own < qualityLimits.sharpness ||
    (own < qualityLimits.softness && own < qualityLimits.besidePartner * partner)
  );
}

/**
 * Fine against coarser structure at the photograph's own resolution, where something is drawn: variance between σ 0 and 1 px
 * over variance between 1 and 3 px, noise as seen on bare ground taken off. About 0.1 to 1 for a sharp photograph.
 */
export function sharpnessOf(input: SideInput, frame: Frame): number {
  const pxPerMm = photographPxPerFramePx(input.map, frame) * frame.pxPerMm;
  const sizeMm = 24;
  const px = Math.min(320, Math.round(sizeMm * pxPerMm));
  const ratios: { fine: number; coarse: number }[] = [];
  for (const [xMm, yMm] of tileCorners(input, px / pxPerMm)) {
    const frame = { widthPx: px, heightPx: px, pxPerMm, originMm: [xMm, yMm] as const };
    const tile = sampleGrey(input.photo, input.map, frame);
    if (tile.data.some((value) => Number.isNaN(value))) continue;
    const one = gaussianBlur(tile.data, px, px, 1);
    const three = gaussianBlur(tile.data, px, px, 3);
    ratios.push({ fine: varianceBetween(tile.data, one, px), coarse: varianceBetween(one, three, px) });
  }
  if (ratios.length < 4) return 1;
  const quiet = Math.min(...ratios.map((ratio) => ratio.fine));
  const drawn = ratios.toSorted((a, b) => b.coarse - a.coarse).slice(0, Math.ceil(ratios.length / 3));
  return median(drawn.map((ratio) => Math.max(0, ratio.fine - quiet) / Math.max(ratio.coarse, 1e-9)));
}

function tileCorners({ sizeMm }: SideInput, tileMm: number): (readonly [number, number])[] {
  const across = 6;
  return Array.from({ length: across * across }, (_, i): readonly [number, number] => [
    ((i % across) / (across - 1)) * Math.max(0, sizeMm[0] - tileMm),
    (Math.floor(i / across) / (across - 1)) * Math.max(0, sizeMm[1] - tileMm),
  ]);
}

function varianceBetween(a: Float32Array, b: Float32Array, size: number): number {
  let sum = 0;
  let squares = 0;
  let count = 0;
  for (let y = 10; y < size - 10; y++) {
    for (let i = y * size + 10; i < (y + 1) * size - 10; i++) {
      const off = a[i]! - b[i]!;
      sum += off;
      squares += off * off;
      count++;
    }
  }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
}

/** Area of connected places clearly brighter than bare ground. */
function glareAreaMm2(side: SideTone): number {
  const { frame, darkness, counts } = side;
  const bright = Uint8Array.from(darkness, (value, i) => (counts[i] && value < -0.15 ? 1 : 0));
  const least = 4 * frame.pxPerMm ** 2;
  const places = connectedPlaces(bright, frame.widthPx, frame.heightPx).filter(
    (place) => place.pixels.length > least,
  );
  return places.reduce((sum, place) => sum + place.pixels.length, 0) / frame.pxPerMm ** 2;
}

function castOf(side: SideTone): number {
  const levels = side.ground.logGround.map((plane) => Math.exp(median(plane)));
  return Math.max(...levels) / Math.max(1e-6, Math.min(...levels));
}
