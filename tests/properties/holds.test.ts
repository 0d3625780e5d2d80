import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seed } from './holds.ts';

test('a broken property is shrunk to its smallest case, with the seed that leads back to it', () => {
  const found = fc.check(
    fc.property(fc.array(fc.integer({ min: 0, max: 1000 })), (list) => list.every((value) => value < 100)),
    { seed, numRuns: 500 },
  );
  expect(found.failed).toBe(true);
  expect(found.counterexample).toEqual([[100]]);
  expect(found.seed).toBe(seed);
  const again = fc.check(
    fc.property(fc.array(fc.integer({ min: 0, max: 1000 })), (list) => list.every((value) => value < 100)),
    { seed, path: found.counterexamplePath!, endOnFailure: true },
  );
  expect(again.counterexample).toEqual([[100]]);
});
