import { cameraLimits } from './cameraLimits.ts';
import type { Exposure } from './exposure.ts';
import type { ObjectPlane, Tilt } from './levelTilt.ts';
import type { DeviceMotion } from './stillness.ts';

/** What the checks say of the live view now. */
export interface LiveReading {
  readonly plane: ObjectPlane;
  /** null: the device tells no tilt. */
  readonly tilt: Tilt | null;
  /** Change since the frame before; null at the first. */
  readonly change: number | null;
  readonly motion: DeviceMotion;
  readonly exposure: Exposure;
  /** Sharpness beside the sharpest like view, 0..1. */
  readonly sharp: number;
}

/** One thing to mend before the photograph is taken. */
export type Mend =
  | 'too-light'
  | 'too-dark'
  | 'glare'
  | 'left-lighter'
  | 'right-lighter'
  | 'head-lighter'
  | 'foot-lighter'
  | 'lower-right'
  | 'lower-left'
  | 'lower-top'
  | 'lower-bottom'
  | 'look-up'
  | 'look-down'
  | 'hold-still'
  | 'soft';

/** What is to be mended, what hands do first before what they do last; empty: take it. */
export function mendsOf(reading: LiveReading): readonly Mend[] {
  const { plane, tilt, change, exposure, sharp } = reading;
  const moving = isMoving(reading);
  const tilted = tilt !== null && tilt.degrees > cameraLimits.tiltDegrees;
  return [
    ...lightMends(exposure),
    ...(tilted ? [tiltMend(tilt, plane)] : []),
    ...(moving ? (['hold-still'] as const) : []),
    // A moving view is soft by itself.
    ...(!moving && change !== null && sharp < cameraLimits.besideSharpest ? (['soft'] as const) : []),
  ];
}

/** What of light is amiss in a view or a photograph. */
export function lightMends({ whites, blacks, glare, leftPercent, headPercent }: Exposure): readonly Mend[] {
  const { unevenPercent } = cameraLimits;
  const found: Mend[] = [];
  if (whites > cameraLimits.whites) found.push('too-light');
  if (blacks > cameraLimits.blacks) found.push('too-dark');
  if (glare > cameraLimits.glare) found.push('glare');
  if (Math.abs(leftPercent) > unevenPercent) found.push(leftPercent > 0 ? 'left-lighter' : 'right-lighter');
  if (Math.abs(headPercent) > unevenPercent) found.push(headPercent > 0 ? 'head-lighter' : 'foot-lighter');
  return found;
}

/** Whether the view or the device moves too much for a sharp photograph. */
export function isMoving({ change, motion }: Pick<LiveReading, 'change' | 'motion'>): boolean {
  return (
    (change ?? Number.POSITIVE_INFINITY) > cameraLimits.change ||
    (motion.turning ?? 0) > cameraLimits.turning ||
    (motion.pushing ?? 0) > cameraLimits.pushing
  );
}

function tiltMend({ right, up }: Tilt, plane: ObjectPlane): Mend {
  if (plane === 'upright') return up > 0 ? 'look-up' : 'look-down';
  if (Math.abs(right) > Math.abs(up)) return right > 0 ? 'lower-right' : 'lower-left';
  return up > 0 ? 'lower-top' : 'lower-bottom';
}
