import { srgbToLinear } from '../../science/colour/srgbTransfer.ts';
import type { Photograph } from '../photograph.ts';

/** One chip as seen: mean code value 0..1 by channel, its known reflectance, and the light on it by channel. */
export interface SeenChip {
  readonly code: readonly [number, number, number];
  readonly reflectance: number;
  /** Relative light at the chip, from the ground's light carried there. */
  readonly light: readonly [number, number, number];
}

/** How code values were bent before the standard curve is applied, and what stray light is taken off. */
export interface FittedResponse {
  /** `code + bend·c(1−c) + tilt·c(1−c)(1−2c)`. */
  readonly bend: number;
  readonly tilt: number;
  /** Linear light, 0..1. */
  readonly flare: number;
  /** Root mean square misfit in reflectance. */
  readonly residual: number;
}

/** How strongly each parameter is held to zero: chips near in tone would otherwise trade one for another. */
const ridge = { bend: 0.4, tilt: 0.4, flare: 0.03 };

/** What a chip's reflectance is worth: printed chips are known to about 2 %, dark ones to 0.004 (from memory). */
function doubtOf(reflectance: number): number {
  return 0.004 + 0.02 * reflectance;
}

/**
 * Fits the camera's response to chips of known reflectance: one bend of the code values common to the channels, a gain by
 * channel, and flare, by damped Gauss–Newton with a ridge towards the standard curve.
 * @param chips at least three of different reflectance.
 * @returns null for fewer, or where the fitted curve would not rise throughout.
 */
export function fitResponse(chips: readonly SeenChip[]): FittedResponse | null {
  if (new Set(chips.map((chip) => chip.reflectance)).size < 3) return null;
  let at = [0, 0, 0];
  let cost = costOf(chips, at);
  for (let round = 0, damping = 1e-3; round < 40 && damping < 1e6; round++) {
    const step = gaussNewtonStep(chips, at, damping);
    const next = at.map((value, i) => value + step[i]!);
    const nextCost = costOf(chips, next);
    if (nextCost < cost) {
      const done = cost - nextCost < 1e-10;
      at = next;
      cost = nextCost;
      damping /= 5;
      if (done) break;
    } else damping *= 8;
  }
  const [bend, tilt, flare] = at as [number, number, number];
  const misfits = reflectanceMisfits(chips, at);
  const residual = Math.sqrt(misfits.reduce((sum, misfit) => sum + misfit * misfit, 0) / misfits.length);
  const fitted = { bend, tilt, flare, residual };
  const rises = Array.from({ length: 256 }, (_, i) => bent(fitted, i / 255)).every(
    (value, i, all) => i === 0 || value > all[i - 1]!,
  );
  return rises ? fitted : null;
}

/** The same photograph with its linear light by the fitted response. */
export function withResponse(photo: Photograph, response: FittedResponse): Photograph {
  const last = photo.toLinear.length - 1;
  const toLinear = photo.toLinear.map((_, code) =>
    Math.max(0, srgbToLinear(bent(response, code / last)) - response.flare),
  );
  return { ...photo, toLinear };
}

function bent({ bend, tilt }: Pick<FittedResponse, 'bend' | 'tilt'>, code: number): number {
  const hump = code * (1 - code);
  return code + bend * hump + tilt * hump * (1 - 2 * code);
}

/** Misfit in reflectance by chip and channel, with the best gain of each channel. */
function reflectanceMisfits(chips: readonly SeenChip[], [bend, tilt, flare]: readonly number[]): number[] {
  return [0, 1, 2].flatMap((channel) => {
    const seen = chips.map((chip) => {
      const linear = srgbToLinear(bent({ bend: bend!, tilt: tilt! }, chip.code[channel]!)) - flare!;
      return linear / chip.light[channel]!;
    });
    let top = 0;
    let bottom = 0;
    for (const [i, chip] of chips.entries()) {
      const weight = 1 / doubtOf(chip.reflectance) ** 2;
      top += weight * seen[i]! * chip.reflectance;
      bottom += weight * seen[i]! ** 2;
    }
    const gain = top / Math.max(bottom, 1e-12);
    return chips.map((chip, i) => gain * seen[i]! - chip.reflectance);
  });
}

function residualsOf(chips: readonly SeenChip[], at: readonly number[]): number[] {
  const misfits = reflectanceMisfits(chips, at);
  const weighted = misfits.map((misfit, i) => misfit / doubtOf(chips[i % chips.length]!.reflectance));
  return [...weighted, at[0]! / ridge.bend, at[1]! / ridge.tilt, at[2]! / ridge.flare];
}

function costOf(chips: readonly SeenChip[], at: readonly number[]): number {
  return residualsOf(chips, at).reduce((sum, residual) => sum + residual * residual, 0);
}

function gaussNewtonStep(chips: readonly SeenChip[], at: readonly number[], damping: number): number[] {
  const base = residualsOf(chips, at);
  const columns = at.map((_, i) => {
    const moved = at.map((value, j) => (i === j ? value + 1e-5 : value));
    return residualsOf(chips, moved).map((residual, k) => (residual - base[k]!) / 1e-5);
  });
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  const normal = columns.map((a, i) => columns.map((b, j) => dot(a, b) * (i === j ? 1 + damping : 1)));
  return solveThree(
    normal,
    columns.map((column) => -dot(column, base)),
  );
}

/** Cramer's rule for three equations. */
function solveThree(m: readonly (readonly number[])[], right: readonly number[]): number[] {
  const det = (a: readonly (readonly number[])[]) =>
    a[0]![0]! * (a[1]![1]! * a[2]![2]! - a[1]![2]! * a[2]![1]!) -
    a[0]![1]! * (a[1]![0]! * a[2]![2]! - a[1]![2]! * a[2]![0]!) +
    a[0]![2]! * (a[1]![0]! * a[2]![1]! - a[1]![1]! * a[2]![0]!);
  const whole = det(m);
  return [0, 1, 2].map(
    (column) => det(m.map((row, i) => row.map((value, j) => (j === column ? right[i]! : value)))) / whole,
  );
}
