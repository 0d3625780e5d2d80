import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { contrastRatio } from '../../science/colour/contrastRatio.testing.ts';
import { chartInk, nameLines } from './chartInk.ts';

const tokens = readFileSync(new URL('../../web/look/tokens.css', import.meta.url), 'utf8');
const grounds = ['#ffffff', tokens.match(/--sheet: (#[0-9a-f]{6});/)![1]!];

it.each(['ink', 'soft', 'tannin'] as const)('%s has at least 7:1 against white and the sheet', (name) => {
  for (const ground of grounds)
    expect(contrastRatio(chartInk[name], ground), ground).toBeGreaterThanOrEqual(7);
});

it('knows black on white as 21:1', () => expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 12));

it('breaks a long name at its spaces and loses nothing of it', () => {
  const name = 'nitric acid in gum, 13–20 drops to 30 ml over tusche in spirit';
  const lines = nameLines(name, 170, 8.5);
  expect(lines.length).toBe(2);
  expect(lines.join(' ').replaceAll(/[^\w\s,–]/gu, '')).toBe(name);
  expect(nameLines('gum alone', 170, 8.5).length).toBe(1);
});
