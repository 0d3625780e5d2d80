import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../foundation/random.ts';
import type { EvidenceCells } from '../../records/evidence.ts';
import { pullChanges } from './pullChanges.ts';
import { type PulledCells, seriesChanges } from './seriesChanges.ts';

const drawn = Array.from({ length: 120 }, (_, cell) => [0, 0, 15, 40, 70, 80][cell % 6]!);

/** A pull that prints what was drawn, with so much more on bare stone and in darks. */
function pulled(number: number, grey: number, darker = 0, missing = 0): PulledCells {
  const printed = drawn.map((hundredths, cell) => {
    if (hundredths === 0) return Math.round(500 * grey);
    if (cell < missing) return 0;
    return Math.round(500 * (hundredths / 100 + (hundredths > 50 ? darker : 0)));
  });
  const cells: EvidenceCells = { columns: 12, rows: 10, cellMm: 4, drawn, printed };
  return { number, cells };
}

describe('what grows over a series of pulls', () => {
  it('is the difference where there are two', () => {
    const two = [pulled(1, 0.01), pulled(2, 0.04)];
    expect(seriesChanges(two)).toEqual(pullChanges(two[0]!.cells, two[1]!.cells));
    expect(seriesChanges(two)!.missingGrows).toBeNull();
    expect(seriesChanges(two.slice(1))).toBeNull();
    expect(seriesChanges([])).toBeNull();
  });

  it('is the slope for each further pull, surer than between two, whatever numbers are left out', () => {
    const rows = [3, 4, 6, 7, 9].map((number) => pulled(number, 0.01 * number, 0.02 * number));
    const { bareGrows, darksGrow } = seriesChanges(rows)!;
    expect(bareGrows!.value).toBeCloseTo(0.01, 3);
    expect(darksGrow!.value).toBeCloseTo(0.02, 3);
    expect(bareGrows!.note).toBe('over 5 pulls, 3 to 9');
    const two = seriesChanges(rows.slice(-2))!;
    expect(bareGrows!.deviation).toBeLessThan(two.bareGrows!.deviation / 3);
  });

  it('is less sure where pulls scatter, and where readings of the room do', () => {
    const even = [1, 2, 3, 4, 5].map((number) => pulled(number, 0.05));
    const uneven = [0.02, 0.09, 0.03, 0.08, 0.03].map((grey, i) => pulled(i + 1, grey));
    expect(seriesChanges(uneven)!.bareGrows!.deviation).toBeGreaterThan(
      3 * seriesChanges(even)!.bareGrows!.deviation,
    );
    expect(Math.abs(seriesChanges(even)!.bareGrows!.value)).toBeLessThan(1e-9);
    expect(seriesChanges(even, 0.02)!.bareGrows!.deviation).toBeCloseTo(0.02 / Math.sqrt(10), 4);
  });

  it('finds its own deviation right: four slopes of five lie within 1.3 of it of the truth', () => {
    const seed = 4711;
    const random = seededRandom(seed);
    let within = 0;
    const rounds = 300;
    for (let round = 0; round < rounds; round++) {
      const rows = [1, 2, 3, 4, 5, 6].map((number) =>
        pulled(number, 0.05 + 0.01 * number + 0.0035 * Math.sqrt(12) * (random() - 0.5)),
      );
      const { value, deviation } = seriesChanges(rows)!.bareGrows!;
      if (Math.abs(value - 0.01) < 1.2816 * deviation) within++;
    }
    expect(within / rounds, `seed ${seed}`).toBeGreaterThan(0.76);
    expect(within / rounds, `seed ${seed}`).toBeLessThan(0.92);
  });

  it('tells more that is missing from pull to pull, and what stays over all of them', () => {
    const more = [10, 30, 50].map((missing, i) => pulled(i + 1, 0, 0, missing));
    const { missingGrows, patchesStay } = seriesChanges(more)!;
    expect(missingGrows!.value).toBeGreaterThan(0.1);
    expect(patchesStay!.value).toBe(1);
    const going = [50, 30, 10].map((missing, i) => pulled(i + 1, 0, 0, missing));
    expect(seriesChanges(going)!.missingGrows!.value).toBeLessThan(-0.1);
    expect(seriesChanges(going)!.patchesStay!.value).toBeLessThan(0.6);
  });

  it('leaves out pulls of another size and places that were not read on every pull', () => {
    const rows = [1, 2, 3].map((number) => pulled(number, 0.01 * number));
    const other = { number: 0, cells: { ...rows[0]!.cells, rows: 9 } };
    expect(seriesChanges([other, ...rows])).toEqual(seriesChanges(rows));
    const half = { ...rows[1]!.cells, printed: rows[1]!.cells.printed.map((p, i) => (i < 12 ? null : p)) };
    const holed = [rows[0]!, { number: 2, cells: half }, rows[2]!];
    expect(seriesChanges(holed)!.bareGrows!.value).toBeCloseTo(0.01, 3);
    const none = { ...half, printed: half.printed.map(() => null) };
    expect(seriesChanges([rows[0]!, { number: 2, cells: none }, rows[2]!])!.bareGrows).toBeNull();
  });

  it('says nothing of pulls that all bear one number', () => {
    expect(seriesChanges([1, 1, 1].map((number) => pulled(number, 0.02)))!.bareGrows).toBeNull();
  });
});
