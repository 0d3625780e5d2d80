import { buildGreyPyramid } from '../../imaging/matching/greyPyramid.ts';
import { refineStretch } from '../../imaging/matching/refineStretch.ts';
import { rankStarts, rectangleCorners, searchStarts } from '../../imaging/matching/starts.ts';
import { mapPoint } from '../../imaging/operations/mapPoint.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import type { PlaneMap } from '../../imaging/planeMap.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';

/**
 * Brings a second photograph of the same object onto stone mm, by matching it with the first: it was set up afresh but
 * lies roughly alike.
 * @returns null where it can't be matched: then there is no repeat to learn from.
 */
export function repeatMap(
  first: Photograph,
  firstMap: PlaneMap,
  again: Photograph,
  sizeMm: Point,
): PlaneMap | null {
  const scaleX = again.widthPx / first.widthPx;
  const scaleY = again.heightPx / first.heightPx;
  const guess = rectangleCorners(sizeMm).map((corner): Point => {
    const [x, y] = mapPoint(firstMap, corner);
    return [x * scaleX, y * scaleY];
  }) as unknown as Corners;
  const firstPyramid = buildGreyPyramid(first);
  const secondPyramid = buildGreyPyramid(again);
  const search = searchStarts(firstPyramid, firstMap.homography, secondPyramid, sizeMm);
  const [best, rival] = rankStarts(search, [guess]);
  if (!best || best.score < 25 || (rival && best.score < 2 * rival.score)) return null;
  const refined = refineStretch(firstPyramid, firstMap, secondPyramid, best.homography, sizeMm, () => true);
  return refined?.map ?? null;
}
