import { readFileSync } from 'node:fs';
import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../src/science/colour/ciede2000.ts';
import type { Lab } from '../../src/science/colour/lab.ts';

/** Sharma, Wu & Dalal 2005 (doi 10.1002/col.20070), Table 1: 34 pairs in the paper's order, printed to 4 decimals. */
const pairs = readFileSync(new URL('data/ciede2000_sharma2005.csv', import.meta.url), 'utf8')
  .trim()
  .split(/\r?\n/)
  .map((line) => line.split(',').map(Number))
  .filter((numbers) => numbers.every((value) => !Number.isNaN(value)))
  .map((numbers) => numbers.slice(-7));

/** Half a unit of the last printed place. */
const printed = 5e-5;

describe('CIEDE2000', () => {
  test('all 34 pairs are there', () => expect(pairs).toHaveLength(34));
  test.each(pairs.map((row, i) => [i + 1, row] as const))('pair %i, both ways round', (_, row) => {
    const first = row.slice(0, 3) as unknown as Lab;
    const second = row.slice(3, 6) as unknown as Lab;
    expect(Math.abs(ciede2000(first, second) - row[6]!)).toBeLessThanOrEqual(printed);
    expect(Math.abs(ciede2000(second, first) - row[6]!)).toBeLessThanOrEqual(printed);
  });
  test('a library written by others agrees', () => {
    for (const row of pairs) {
      const theirs = new Color('lab', row.slice(0, 3) as [number, number, number]).deltaE2000(
        new Color('lab', row.slice(3, 6) as [number, number, number]),
      );
      expect(ciede2000(row.slice(0, 3) as unknown as Lab, row.slice(3, 6) as unknown as Lab)).toBeCloseTo(
        theirs,
        9,
      );
    }
  });
  test('equal colours do not differ; a missing value gives NaN', () => {
    expect(ciede2000([50, 2, 3], [50, 2, 3])).toBe(0);
    expect(ciede2000([Number.NaN, 2, 3], [50, 2, 3])).toBeNaN();
  });
});
