import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { srgbToLinear } from '../../science/colour/srgbTransfer.ts';

const root = new URL('..', import.meta.url);
const tokens = readFileSync(new URL('look/tokens.css', root), 'utf8');
const sheets = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((path) =>
  path.endsWith('.css'),
);

/** Words on their ground, WCAG 2.2 AA: 4.5:1. */
const pairs = [
  ['ink', 'ground'],
  ['ink', 'sheet'],
  ['ink', 'bed'],
  ['ink', 'stone'],
  ['sheet', 'ink'],
  ['sheet', 'tannin'],
  ['sheet', 'danger'],
  ['soft', 'ground'],
  ['soft', 'sheet'],
  ['tannin', 'ground'],
  ['danger', 'danger-wash'],
] as const;

it.each(pairs)('%s on %s is read', (words, ground) =>
  expect(contrast(token(words), token(ground))).toBeGreaterThanOrEqual(4.5),
);

it('what stands on black is not coloured as what stands on the bed, which is black by day', () => {
  expect(sheets.length).toBeGreaterThan(50);
  // at the bench, the press and the camera the bed is dark
  const byDay = sheets.filter((path) => !/screens\/(bench|editions|camera)\//.test(path));
  const black = byDay.flatMap((path) =>
    [...readFileSync(new URL(path, root), 'utf8').matchAll(/([^{}]+)\{([^{}]*)\}/g)]
      .filter(
        ([, , said]) => /background: var\(--ink\)/.test(said!) && /\bcolor: var\(--bed-ink\)/.test(said!),
      )
      .map(([, who]) => `${path}: ${who!.trim()}`),
  );
  expect(black).toEqual([]);
});

function token(name: string): string {
  return tokens.match(new RegExp(`--${name}: (#[0-9a-f]{6});`))![1]!;
}

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
