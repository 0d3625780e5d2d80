import { type Failure, failure } from '../../foundation/failure.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { crossesItself, isConvex, signedArea } from '../../science/geometry/polygon.ts';

/** A corner set on the very edge may be rounded outside it. */
const edgeTolerancePx = 1;
/** Three corners this flat, as the triangle's area over the longest side squared, are on one line: 30 mm on 1.5 m. */
const flattest = 0.01;
const cornerNames = ['top left', 'top right', 'bottom right', 'bottom left'] as const;

/**
 * Judges four corners (photograph px) against the picture that they were set on: inside it, not on one line, going
 * round once without crossing or folding inward, and clockwise on the stone. On the proof either way round is legal:
 * a print is a mirror image. Null when usable.
 */
export function validateCorners(
  corners: Corners,
  photo: 'stone' | 'proof',
  widthPx: number,
  heightPx: number,
): Failure | null {
  const path = `${photo}.corners`;
  for (const [index, [x, y]] of corners.entries()) {
    const inside = within(x, widthPx) && within(y, heightPx);
    if (!inside) {
      const corner = `${index + 1} (${cornerNames[index]})`;
      return failure(
        'corners-outside',
        { corner, photo, width: widthPx, height: heightPx },
        `${path}[${index}]`,
      );
    }
  }
  if (almostOnOneLine(corners)) return failure('corners-collinear', { photo }, path);
  if (crossesItself(corners) || !isConvex(corners)) return failure('corners-crossed', { photo }, path);
  if (photo === 'stone' && signedArea(corners) < 0) return failure('corners-anticlockwise', {}, path);
  return null;
}

function within(value: number, extent: number): boolean {
  return value >= -edgeTolerancePx && value <= extent + edgeTolerancePx;
}

function almostOnOneLine(corners: readonly Point[]): boolean {
  return corners.some((_, left) => {
    const triangle = corners.filter((_, index) => index !== left);
    const longest = Math.max(
      ...triangle.map(([x, y], index) => {
        const [nextX, nextY] = triangle[(index + 1) % 3]!;
        return Math.hypot(nextX - x, nextY - y);
      }),
    );
    return !(Math.abs(signedArea(triangle)) / longest ** 2 >= flattest);
  });
}
