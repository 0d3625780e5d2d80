import { expect, it } from 'vitest';
import { readTestStoneCase } from '../../bench/testStoneCase.ts';

it('tells what became of every patch of a rendered test stone', { timeout: 300_000 }, async () => {
  const { patches, right, within, wrong } = await readTestStoneCase(11, 4);
  expect(patches).toBe(48);
  // a patch drawn or printed right at a threshold may fall on its other side
  expect(right, wrong.join('\n')).toBeGreaterThanOrEqual(46);
  expect(within).toBeGreaterThanOrEqual(47);
});
