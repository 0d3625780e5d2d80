import { describe, expect, it } from 'vitest';
import type { Point } from '../../science/geometry/point.ts';
import {
  boxOf,
  chipAt,
  chipsTrouble,
  densityOf,
  drawnBox,
  movedChip,
  nextInRow,
  pressedBox,
  reflectanceOf,
  resizedChip,
  scaledChip,
} from './chipBoxes.ts';

const size: Point = [400, 300];
const chip = drawnBox([60, 40], [40, 20], size)!;

describe('grey chips being set', () => {
  it('are boxes between two places in any order, on the photograph, and none of a slip', () => {
    expect(boxOf(chip)).toEqual({ from: [40, 20], to: [60, 40] });
    expect(boxOf(drawnBox([390, 290], [500, 500], size)!).to).toEqual(size);
    expect(drawnBox([10, 10], [12, 80], size)).toBeNull();
  });

  it('are moved no farther than the edge, and resized to something', () => {
    expect(boxOf(movedChip(chip, [-100, 5], size))).toEqual({ from: [0, 25], to: [20, 45] });
    expect(boxOf(resizedChip(chip, [10, -4], size))).toEqual({ from: [40, 20], to: [70, 36] });
    expect(resizedChip(chip, [-30, 0], size)).toBe(chip);
  });

  it('are put by a press, as large as the last one, and made larger about their middle', () => {
    expect(boxOf(pressedBox([100, 100], [], size))).toEqual({ from: [96, 96], to: [104, 104] });
    expect(boxOf(pressedBox([100, 100], [{ polygonPx: chip }], size))).toEqual({
      from: [90, 90],
      to: [110, 110],
    });
    expect(boxOf(scaledChip(chip, 1.2, size))).toEqual({ from: [38, 18], to: [62, 42] });
    expect(scaledChip(chip, 0.01, size)).toBe(chip);
  });

  it('go on in a row as they began', () => {
    expect(nextInRow([], size)).toBeNull();
    expect(boxOf(nextInRow([{ polygonPx: chip }], size)!).from).toEqual([68, 20]);
    const second = movedChip(chip, [25, 1], size);
    expect(boxOf(nextInRow([{ polygonPx: chip }, { polygonPx: second }], size)!).from).toEqual([90, 22]);
  });

  it('are taken hold of inside, and the one in hand by its corner mark', () => {
    const chips = [{ polygonPx: chip }];
    const corner = { index: 0, awayPx: 6, reachPx: 5 };
    expect(chipAt(chips, [50, 30], null)).toEqual({ index: 0, part: 'inside' });
    expect(chipAt(chips, [67, 45], corner)).toEqual({ index: 0, part: 'corner' });
    expect(chipAt(chips, [67, 45], null)).toBeNull();
    expect(chipAt(chips, [100, 100], corner)).toBeNull();
  });

  it('are of a known density: 10 to the minus D of the light, both ways', () => {
    expect(reflectanceOf(1)).toBeCloseTo(0.1, 12);
    expect(reflectanceOf(0)).toBe(1);
    for (const density of [0, 0.05, 0.7, 1.95]) expect(densityOf(reflectanceOf(density))).toBe(density);
    expect(chipsTrouble([{ name: 'a', polygonPx: chip, density: null }])).toMatch(/Chip 1 has no density/);
    expect(chipsTrouble([{ name: 'a', polygonPx: chip, density: 0 }])).toBeNull();
  });
});
