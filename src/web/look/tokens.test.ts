import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { contrastRatio } from '../../science/colour/contrastRatio.testing.ts';

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
  expect(contrastRatio(token(words), token(ground))).toBeGreaterThanOrEqual(4.5),
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
