import { type Failure, failure } from '../../foundation/failure.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import type { MeasureInput } from './measureInput.ts';
import { validateChips } from './validateChips.ts';
import { validateCorners } from './validateCorners.ts';
import { validateProportions, validateSize } from './validateSize.ts';
import { validateZones } from './validateZones.ts';

/** A photograph shorter than this on one side holds nothing to be measured. */
const leastPx = 200;

/** What can be judged before any photograph is decoded. Null when usable, else the first fault. */
export function argumentsFailure(input: MeasureInput): Failure | null {
  return validateSize(input.sizeMm) ?? validateZones(input.zones, input.sizeMm);
}

/** What can be judged once both photographs are there. Null when usable, else the first fault. */
export function picturesFailure(
  input: MeasureInput,
  photos: { stone: Photograph; proof: Photograph },
): Failure | null {
  for (const side of ['stone', 'proof'] as const) {
    const { widthPx, heightPx } = photos[side];
    const { corners, fileName } = input[side];
    if (Math.min(widthPx, heightPx) < leastPx) {
      return failure('picture-too-small', { file: fileName, width: widthPx, height: heightPx }, side);
    }
    const fault =
      (corners && validateCorners(corners, side, widthPx, heightPx)) ??
      validateChips(input.chips, side, widthPx, heightPx);
    if (fault) return fault;
  }
  return input.stone.corners ? validateProportions(input.sizeMm, input.stone.corners) : null;
}
