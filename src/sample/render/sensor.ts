import { normalDraw, type Random, seededRandom } from '../../foundation/random.ts';
import type { Colour } from './body.ts';

/** What the light and the camera do to a picture after the lens. */
export interface SensorSettings {
  /** Linear light that a perfect white in even light gives, as a share of full scale. */
  readonly exposure: number;
  /** Gains of the three channels: the colour of lamps and white balance. */
  readonly cast: Colour;
  /** Light falling unevenly: slopes across and down, and the fall at half the diagonal (vignetting and lamps). */
  readonly lightSlope: readonly [across: number, down: number];
  readonly falloff: number;
  /** Stray light added everywhere, as a share of full scale. */
  readonly flare: number;
  /** A lamp mirrored in a wet or greasy surface: where (shares of half the diagonal from the middle), how wide, how strong. */
  readonly glare: {
    readonly at: readonly [number, number];
    readonly radius: number;
    readonly light: number;
  } | null;
  /** Variance of a pixel: shot · light + read. */
  readonly shotNoise: number;
  readonly readNoise: number;
  /** Strength of a phone's contrast curve; 0 is the standard sRGB curve. */
  readonly contrast: number;
  /** Gaussian blur of lens and focus, px. */
  readonly blurPx: number;
  readonly bits: 8 | 16;
}

export const plainSensor: SensorSettings = {
  exposure: 0.86,
  cast: [1, 1, 1],
  lightSlope: [0.04, -0.03],
  falloff: 0.1,
  flare: 0.002,
  glare: null,
  shotNoise: 1.6e-4,
  readNoise: 2e-6,
  contrast: 0,
  blurPx: 0.55,
  bits: 8,
};

/** sRGB transfer function, linear 0..1 to coded 0..1 (IEC 61966-2-1). */
function sRgbCode(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/** A phone's contrast curve on coded values: darker shadows, lighter middles and lights; 0 and 1 stay. */
function contrasted(code: number, strength: number): number {
  return code + strength * 4 * code * (1 - code) * (code - 0.42);
}

/** Codes for linear light in steps of 1/`steps`; index 0 is no light, the last is full scale. */
export function codeTable(settings: SensorSettings, steps: number): Float32Array {
  const most = settings.bits === 8 ? 255 : 65535;
  return Float32Array.from({ length: steps + 1 }, (_, i) =>
    Math.min(most, Math.max(0, most * contrasted(sRgbCode(i / steps), settings.contrast))),
  );
}

/** A long table of standard normal draws, and a quick walk through it. */
export function normalTable(seed: number): { readonly draws: Float32Array; readonly walk: Random } {
  const random = seededRandom(seed);
  return { draws: Float32Array.from({ length: 1 << 16 }, () => normalDraw(random)), walk: random };
}

/** Light that glare adds at a place, as a share of full scale. */
export function glareAt(glare: SensorSettings['glare'], u: number, v: number): number {
  if (!glare) return 0;
  return (
    glare.light *
    Math.exp(-(((u - glare.at[0]) / glare.radius) ** 2) - ((v - glare.at[1]) / glare.radius) ** 2)
  );
}
