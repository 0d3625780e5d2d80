import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Corners, Point } from '../../../science/geometry/point.ts';
import { projective } from '../straightened.ts';
import { workFrame } from './workFrame.ts';

/**
 * Where the corners of what is measured (see `workFrame`) lie on a photograph of the stone, px, clockwise
 * from top left. null where its marks don't say.
 */
export function frameCorners(
  corners: AttachedPhotograph['corners'],
  work: Pick<WorkEntry, 'rectangle' | 'stone' | 'zones'>,
): Corners | null {
  if (!corners) return null;
  if (corners.of === 'rectangle') return work.rectangle ? corners.px : null;
  const { widthMm, heightMm } = work.stone;
  const toPx = projective(cornersOf([0, 0], [widthMm, heightMm]), corners.px);
  if (!toPx) return null;
  const { offsetMm, sizeMm } = workFrame(work);
  return cornersOf(offsetMm, sizeMm).map((mm) => mapped(toPx, mm)) as unknown as Corners;
}

function cornersOf([x, y]: Point, [width, height]: Point): Corners {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function mapped(map: readonly number[], [x, y]: Point): Point {
  const [a, b, c, d, e, f, g, h] = map as [number, number, number, number, number, number, number, number];
  const depth = g * x + h * y + 1;
  return [(a * x + b * y + c) / depth, (d * x + e * y + f) / depth];
}
