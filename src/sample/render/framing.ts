import type { Point } from '../../science/geometry/point.ts';
import { chipSizeMm } from './chipsOnTable.ts';
import type { PairCase, ShotSettings } from './pairCase.ts';
import type { Scene } from './takePhotograph.ts';

/** Table seen all round the object. */
const tableMarginMm = 14;

/** Points the camera so that object, chips and some table fill the picture; long side of picture along the object's. */
export function framed(pair: PairCase, shot: ShotSettings, scene: Scene) {
  const { body, chips } = scene;
  // The whole work rectangle stays in view, also where the sheet missed part of it.
  const [rectangleWidth, rectangleHeight] = pair.drawing.sizeMm;
  const leftMm = Math.min(body.leftMm, -10);
  const topMm = Math.min(body.topMm, -10);
  const bottomMm = Math.max(body.bottomMm, rectangleHeight + 10);
  const rightMm = Math.max(
    chips.length > 0 ? chips[0]!.leftMm + chipSizeMm : body.rightMm,
    rectangleWidth + 10,
  );
  const width = rightMm - leftMm;
  const height = bottomMm - topMm;
  const long = Math.round(Math.sqrt((pair.megapixels * 1e6 * 4) / 3) / 4) * 4;
  const short = Math.round((long * 0.75) / 4) * 4;
  const [widthPx, heightPx] = width > height ? [long, short] : [short, long];
  const roll = (shot.rollDegrees * Math.PI) / 180;
  const [along, aside] = [Math.abs(Math.cos(roll)), Math.abs(Math.sin(roll))];
  const spanX = width * along + height * aside + 2 * tableMarginMm;
  const spanY = height * along + width * aside + 2 * tableMarginMm;
  return {
    widthPx,
    heightPx,
    pxPerMm: Math.min(widthPx / spanX, heightPx / spanY) * 0.97,
    distanceMm: shot.distanceMm,
    centreMm: [(leftMm + rightMm) / 2, (topMm + bottomMm) / 2] as Point,
    rollDegrees: shot.rollDegrees,
    tiltXDegrees: shot.tiltXDegrees,
    tiltYDegrees: shot.tiltYDegrees,
    lensBend: shot.lensBend,
  };
}
