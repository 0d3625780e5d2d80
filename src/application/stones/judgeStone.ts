import { type Failure, failure } from '../../foundation/failure.ts';

/** Sizes beyond which a stone is a slip of the pen, mm. A larger one lies on no press bed. Our rule, no source. */
const possibleMm = { side: { least: 20, most: 3000 }, thickness: { least: 5, most: 500 } };

/** A stone's size in mm; thicknesses that are not known are left out or null. */
export interface StoneSize {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly thicknessesMm: readonly (number | null)[];
}

/** Refuses a stone of an impossible size with `stone-impossible`; null when possible. */
export function judgeStone({ widthMm, heightMm, thicknessesMm }: StoneSize, path = 'stone'): Failure | null {
  const known = thicknessesMm.filter((thickness) => thickness !== null);
  const { side, thickness } = possibleMm;
  const sides = [widthMm, heightMm];
  const tooLarge = sides.some((mm) => mm > side.most) || known.some((mm) => mm > thickness.most);
  const tooSmall = sides.some((mm) => !(mm >= side.least)) || known.some((mm) => !(mm >= thickness.least));
  if (!tooLarge && !tooSmall) return null;
  const size = { width: widthMm, height: heightMm, thickness: known[0] ?? 'unknown' };
  return failure('stone-impossible', { ...size, why: `it is too ${tooLarge ? 'large' : 'small'}` }, path);
}
