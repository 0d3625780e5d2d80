import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { srgbToLinear } from '../../science/colour/srgbTransfer.ts';
import { chartInk, nameLines } from './chartInk.ts';

const tokens = readFileSync(new URL('../../web/look/tokens.css', import.meta.url), 'utf8');
const grounds = ['#ffffff', tokens.match(/--sheet: (#[0-9a-f]{6});/)![1]!];

it.each(['ink', 'soft', 'tannin'] as const)('%s has at least 7:1 against white and the sheet', (name) => {
  for (const ground of grounds) expect(contrast(chartInk[name], ground), ground).toBeGreaterThanOrEqual(7);
});

it('knows black on white as 21:1', () => expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 12));

it('breaks a long name at its spaces and loses nothing of it', () => {
  const name = 'nitric acid in gum, 13–20 drops to 30 ml over tusche in spirit';
  const lines = nameLines(name, 170, 8.5);
  expect(lines.length).toBe(2);
  expect(lines.join(' ').replaceAll(/[^\w\s,–]/gu, '')).toBe(name);
  expect(nameLines('gum alone', 170, 8.5).length).toBe(1);
});

/** WCAG 2.2, contrast ratio: (L1 + 0.05) / (L2 + 0.05) of relative luminances, the lighter above. */
function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** WCAG 2.2, relative luminance of an sRGB colour such as `#1a1714`. */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) =>
    srgbToLinear(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
