import type { Lab } from './lab.ts';

const radian = Math.PI / 180;

/** Hues this near to opposite count as exactly opposite: rounding must not choose which way their mean lies, in degrees. */
const oppositeWithin = 1e-9;

/**
 * CIEDE2000 colour difference with k_L = k_C = k_H = 1, the same both ways round.
 * Sharma, G., Wu, W. & Dalal, E. N. (2005), Color Research & Application 30, 21–30, doi 10.1002/col.20070.
 * @returns 0 and above; NaN for NaN.
 */
export function ciede2000(first: Lab, second: Lab): number {
  const meanChroma = (Math.hypot(first[1], first[2]) + Math.hypot(second[1], second[2])) / 2;
  const stretch = 1 + 0.5 * (1 - Math.sqrt(meanChroma ** 7 / (meanChroma ** 7 + 25 ** 7)));
  const [chroma1, hue1] = polar(first[1] * stretch, first[2]);
  const [chroma2, hue2] = polar(second[1] * stretch, second[2]);
  const neutral = chroma1 * chroma2 === 0;

  const lightnessStep = second[0] - first[0];
  const chromaStep = chroma2 - chroma1;
  const turn = neutral ? 0 : shortWay(hue2 - hue1);
  const hueStep = 2 * Math.sqrt(chroma1 * chroma2) * Math.sin((turn / 2) * radian);

  const lightness = (first[0] + second[0]) / 2;
  const chroma = (chroma1 + chroma2) / 2;
  const hue = neutral ? hue1 + hue2 : meanHue(hue1, hue2);

  const t =
    1 -
    0.17 * Math.cos((hue - 30) * radian) +
    0.24 * Math.cos(2 * hue * radian) +
    0.32 * Math.cos((3 * hue + 6) * radian) -
    0.2 * Math.cos((4 * hue - 63) * radian);
  const lightnessScale = 1 + (0.015 * (lightness - 50) ** 2) / Math.sqrt(20 + (lightness - 50) ** 2);
  const chromaScale = 1 + 0.045 * chroma;
  const hueScale = 1 + 0.015 * chroma * t;
  const turning = 30 * Math.exp(-(((hue - 275) / 25) ** 2));
  const rotation = -2 * Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7)) * Math.sin(2 * turning * radian);

  const l = lightnessStep / lightnessScale;
  const c = chromaStep / chromaScale;
  const h = hueStep / hueScale;
  return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
}

/** Chroma, and hue 0..360 degrees; hue 0 for a neutral. */
function polar(a: number, b: number): readonly [chroma: number, hue: number] {
  if (a === 0 && b === 0) return [0, 0];
  const hue = Math.atan2(b, a) / radian;
  return [Math.hypot(a, b), hue < 0 ? hue + 360 : hue];
}

/** A turn of −180 < turn ≤ 180 degrees; which of the two ways round opposite hues go does not show in the result. */
function shortWay(turn: number): number {
  if (turn > 180) return turn - 360;
  return turn <= -180 ? turn + 360 : turn;
}

/** Mean of two hues along the shorter arc, 0..360 degrees; plain mean for opposite hues, as the paper's equation 14 has it. */
function meanHue(hue1: number, hue2: number): number {
  const apart = Math.abs(hue1 - hue2);
  const sum = hue1 + hue2;
  if (apart <= 180 + oppositeWithin) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}
