import type { TrialWish } from '../../../records/trialDesign.ts';

/** A patch smaller than this can't be read: its tone is a mean over what is left when 1.4 mm each side is left out. Our rule. */
export const leastPatchMm = 12;
/** Larger patches say no more. Our rule. */
export const mostPatchMm = 40;
/** Left out at each side, mm, as zones are read. */
const insetMm = 1.4;
/** A patch is read as a mean over a square of so many pixels at least. Our rule. */
const leastPixels = 30;
/** Share of the photograph's long side that the stone fills, ruler and clean paper beside it. Our rule. */
const filled = 0.8;

/** The smallest patch that the camera resolves on this stone, mm. */
export function leastPatchFor({ stone, cameraPixels }: TrialWish): number {
  if (!cameraPixels) return leastPatchMm;
  const pixelsPerMm = (filled * cameraPixels) / Math.max(stone.widthMm, stone.heightMm);
  return Math.max(leastPatchMm, 2 * insetMm + leastPixels / pixelsPerMm);
}
