import { expect, it } from 'vitest';
import { alikeDarknessWords } from './seriesWords.ts';

it('darknesses side by side have as many decimals as the one that needs most', () => {
  expect(alikeDarknessWords([0, 0.1, -0.244])).toEqual(['0.000', '0.100', '-0.244']);
  expect(alikeDarknessWords([-0.0001, 0.3])).toEqual(['0.00', '0.30']);
});
