import type { Point } from '../../../science/geometry/point.ts';
import type { CameraFrame, FrameBox } from './cameraFrame.ts';

/** The guide in a picture, as shares 0..1 of the picture's width and height, and whether the object lies turned in it. */
export interface GuideBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The object's long side lies along the picture's: it is shown a quarter turn round. */
  readonly turned: boolean;
}

/** Share of the picture that stays free on each side, so that ground shows all round: our rule. */
const margin = 0.07;

/**
 * The largest frame of an object's true proportion in the middle of a picture, upright or a quarter turn round,
 * whichever is larger.
 * @param viewPx the picture's width and height, above 0
 * @param sizeMm the object's width and height, above 0; null: not known, the frame then has the picture's own proportion
 */
export function guideBox(viewPx: Point, sizeMm: Point | null): GuideBox {
  const room: Point = [viewPx[0] * (1 - 2 * margin), viewPx[1] * (1 - 2 * margin)];
  if (sizeMm === null)
    return { left: margin, top: margin, width: 1 - 2 * margin, height: 1 - 2 * margin, turned: false };
  const upright = scaleInto(room, sizeMm);
  const across = scaleInto(room, [sizeMm[1], sizeMm[0]]);
  const turned = across > upright;
  const scale = turned ? across : upright;
  const [widthMm, heightMm] = turned ? [sizeMm[1], sizeMm[0]] : sizeMm;
  const width = (widthMm * scale) / viewPx[0];
  const height = (heightMm * scale) / viewPx[1];
  return { left: (1 - width) / 2, top: (1 - height) / 2, width, height, turned };
}

/** The guide in the px of a frame, at least one px each way. */
export function boxInFrame(
  { left, top, width, height }: GuideBox,
  { widthPx, heightPx }: Pick<CameraFrame, 'widthPx' | 'heightPx'>,
): FrameBox {
  const fromX = Math.min(widthPx - 1, Math.max(0, Math.round(left * widthPx)));
  const fromY = Math.min(heightPx - 1, Math.max(0, Math.round(top * heightPx)));
  return {
    left: fromX,
    top: fromY,
    right: Math.min(widthPx, Math.max(fromX + 1, Math.round((left + width) * widthPx))),
    bottom: Math.min(heightPx, Math.max(fromY + 1, Math.round((top + height) * heightPx))),
  };
}

function scaleInto(room: Point, size: Point): number {
  return Math.min(room[0] / size[0], room[1] / size[1]);
}
