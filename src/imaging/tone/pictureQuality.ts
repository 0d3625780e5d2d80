import type { ComparisonWarning } from '../../records/comparison.ts';
import { median } from '../../science/statistics/quantile.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import { photographPxPerFramePx } from '../operations/mapPoint.ts';
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

/**
 * What is wrong with one photograph as a photograph, in words with what to do.
 * @param partner the other object: a picture far softer than its partner's is blurred. null where it could not be read.
 */
export function pictureWarnings(
  input: SideInput,
  side: SideTone,
  partner: Pick<SideTone, 'sharpness'> | null,
): ComparisonWarning[] {
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
  found.push(...blurWarning(input.side, side, partner));
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

/** Said of a blurred photograph, once; the other warnings need no partner. */
export function blurWarning(
  side: SideInput['side'],
  { clipped, sharpness }: Pick<SideTone, 'clipped' | 'sharpness'>,
  partner: Pick<SideTone, 'sharpness'> | null,
): ComparisonWarning[] {
  if (clipped > qualityLimits.noTone || !isBlurred(sharpness, partner?.sharpness ?? null)) return [];
  const message = `The photograph of the ${words[side]} is blurred: steady the camera, use the timer, and take it again.`;
  return [{ code: 'blurred', message }];
}

function isBlurred(own: number, partner: number | null): boolean {
  return (
    own < qualityLimits.sharpness ||
    (partner !== null && own < qualityLimits.softness && own < qualityLimits.besidePartner * partner)
  );
}

/** Area of connected places clearly brighter than bare ground. */
function glareAreaMm2(side: SideTone): number {
  const { frame, darkness, counts } = side;
  const bright = new Uint8Array(darkness.length);
  for (let i = 0; i < bright.length; i++) if (counts[i] && darkness[i]! < -0.15) bright[i] = 1;
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
