import { cameraLimits } from './cameraLimits.ts';
import type { Exposure } from './exposure.ts';
import { lightMends, type Mend } from './shotAdvice.ts';

/** What was read from a photograph that was taken or chosen. */
export interface StillReading {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly exposure: Exposure;
  /** Share of fine structure at full size; null: nothing in it to judge by. */
  readonly fineShare: number | null;
  /** Mean variance of the Laplacian over the parts that were looked at, grey levels squared. */
  readonly variance: number;
}

/** What is said of it. */
export interface StillFindings {
  readonly light: readonly Mend[];
  /** `unknown`: there was nothing in it to judge by. */
  readonly sharpness: 'sharp' | 'soft' | 'softer-than-before' | 'unknown';
  /** Degrees off square when it was taken; null: not known. */
  readonly tiltDegrees: number | null;
  readonly tilted: boolean;
  /** Nothing was found wrong with it. Never says that nothing is. */
  readonly clean: boolean;
}

/**
 * Judges a photograph by our limits.
 * @param sharpest variance of the sharpest photograph of the same thing in this sitting; null: it is the first
 * @param tiltDegrees as the device told when it was taken
 */
export function stillFindings(
  reading: StillReading,
  sharpest: number | null,
  tiltDegrees: number | null,
): StillFindings {
  const light = lightMends(reading.exposure);
  const sharpness = sharpnessOf(reading, sharpest);
  const tilted = tiltDegrees !== null && tiltDegrees > cameraLimits.tiltDegrees;
  const soft = sharpness === 'soft' || sharpness === 'softer-than-before';
  return { light, sharpness, tiltDegrees, tilted, clean: light.length === 0 && !soft && !tilted };
}

function sharpnessOf({ fineShare, variance }: StillReading, sharpest: number | null) {
  if (fineShare === null) return 'unknown';
  if (fineShare < cameraLimits.fineShare) return 'soft';
  return sharpest !== null && variance < cameraLimits.besideSharpest * sharpest
    ? 'softer-than-before'
    : 'sharp';
}
