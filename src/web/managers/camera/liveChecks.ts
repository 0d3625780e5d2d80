import type { Point } from '../../../science/geometry/point.ts';
import type { CameraFrame } from './cameraFrame.ts';
import type { DeviceSenses } from './deviceSenses.ts';
import { exposureOf } from './exposure.ts';
import { boxInFrame, guideBox } from './guideBox.ts';
import { type ObjectPlane, tiltOf } from './levelTilt.ts';
import { besideSharpest, type SharpestView } from './sharpestSoFar.ts';
import { laplacianVariance } from './sharpness.ts';
import type { LiveReading } from './shotAdvice.ts';
import { frameChange, type SmallFrame, smallFrame } from './stillness.ts';

/** Longer side in px at which the live picture is looked at. */
export const liveLookPx = 480;

/** What the checks of one sitting remember from one look to the next. */
export interface LiveMemory {
  readonly before: SmallFrame | null;
  readonly sharpest: SharpestView | null;
}

export const nothingSeen: LiveMemory = { before: null, sharpest: null };

/** One look at the live picture: what the checks say of it, and what to remember. */
export function lookLive(
  memory: LiveMemory,
  frame: CameraFrame,
  {
    sizeMm,
    plane,
    senses,
    screenTurn,
  }: {
    readonly sizeMm: Point | null;
    readonly plane: ObjectPlane;
    readonly senses: Pick<DeviceSenses, 'angles' | 'motion'>;
    readonly screenTurn: number;
  },
): { readonly reading: LiveReading; readonly memory: LiveMemory } {
  const box = boxInFrame(guideBox([frame.widthPx, frame.heightPx], sizeMm), frame);
  const small = smallFrame(frame);
  const change = memory.before === null ? null : frameChange(memory.before, small);
  const compared = besideSharpest(memory.sharpest, { variance: laplacianVariance(frame, box), view: small });
  const angles = senses.angles();
  return {
    reading: {
      plane,
      tilt: angles === null ? null : tiltOf(angles, plane, screenTurn),
      change,
      motion: senses.motion(),
      exposure: exposureOf(frame, box),
      sharp: compared.share,
    },
    memory: { before: small, sharpest: compared.best },
  };
}
