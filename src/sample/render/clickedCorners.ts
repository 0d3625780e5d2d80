import { normalDraw, seededRandom } from '../../foundation/random.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Camera } from './camera.ts';
import type { PairCase } from './pairCase.ts';

function cornersMm(pair: PairCase): Point[] {
  const [width, height] = pair.drawing.sizeMm;
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

/** Corners of the work rectangle under a loupe: a fifth of a millimetre off, as the marks themselves have a width. */
export function clickedStone(pair: PairCase, seen: Camera): Corners {
  const random = seededRandom(pair.seed + 40);
  const corners = cornersMm(pair).map((mm): Point => {
    const [dx, dy] = [normalDraw(random) * 0.2, normalDraw(random) * 0.2];
    return seen.toPx([mm[0] + dx, mm[1] + dy]);
  });
  return corners as unknown as Corners;
}

/**
 * The stone's corners as guessed on the print: off by up to the case's error. Whoever sets them takes it for granted
 * that the print is the mirror image; on one that reads as the stone does, left and right come out exchanged.
 */
export function clickedProof(pair: PairCase, toProofPx: (stoneMm: Point) => Point): Corners {
  const random = seededRandom(pair.seed + 41);
  const corners = cornersMm(pair).map((mm): Point => {
    const direction = random() * 2 * Math.PI;
    const distance = pair.cornerErrorMm * Math.sqrt(random());
    const x = pair.mirrored ? mm[0] : pair.drawing.sizeMm[0] - mm[0];
    return toProofPx([x + distance * Math.cos(direction), mm[1] + distance * Math.sin(direction)]);
  });
  return corners as unknown as Corners;
}
