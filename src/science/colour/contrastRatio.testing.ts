import { srgbToLinear } from './srgbTransfer.ts';

/**
 * Contrast ratio of two sRGB colours such as `#1a1714`, 1 to 21: (L1 + 0.05) / (L2 + 0.05) of their relative
 * luminances, the lighter above (W3C, Web Content Accessibility Guidelines 2.2, 2023, "contrast ratio").
 */
export function contrastRatio(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** Relative luminance of an sRGB colour, 0 to 1 (the same, "relative luminance"). */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) =>
    srgbToLinear(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
