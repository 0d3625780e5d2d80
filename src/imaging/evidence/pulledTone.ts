import { cellMm, type EvidenceGrid } from './evidenceGrid.ts';
import { type ExpectedTone, expectedTone } from './expectedTone.ts';
import { gainAt, noPlane, type Plane, planeThrough } from './gainPlane.ts';

/** A print taken apart: what tone explains, what a slope over the sheet explains, and what is left by place. */
export interface PulledTone {
  readonly grid: EvidenceGrid;
  readonly expected: ExpectedTone;
  readonly plane: Plane;
  /** Printed over expected less 1, the slope taken out; NaN on outlines, off the sheet and on tones too light to say. */
  readonly left: Float32Array;
}

/** Tones that print lighter than this say nothing about a share of themselves. */
export const leastTone = 0.06;
const rounds = 4;
/** A slope that moves by less from round to round has settled. */
const settled = 0.005;

/**
 * Tone curve and slope depend on each other: fitted in turn.
 * @param aside 1 for cells that may be faulty: not fitted to where others say enough.
 */
export function pulledTone(grid: EvidenceGrid, groups: Uint8Array, aside: Uint8Array): PulledTone {
  let plane = noPlane;
  let expected = expectedTone(grid, groups, () => 1, aside);
  for (let round = 0; round < rounds; round++) {
    const sound = relative(grid, expected, noPlane).map((value, cell) => (aside[cell] ? Number.NaN : value));
    const own = planeThrough(grid, sound, expected.cells);
    const moved = Math.hypot(own.across - plane.across, own.down - plane.down);
    plane = own;
    if (moved < settled) break;
    expected = expectedTone(grid, groups, (cell) => gainAt(own, grid, cell), aside);
  }
  return { grid, expected, plane, left: relative(grid, expected, plane) };
}

function relative(grid: EvidenceGrid, expected: ExpectedTone, plane: Plane): Float32Array {
  return grid.printed.map((printed, cell) => {
    const tone = expected.cells[cell]! * gainAt(plane, grid, cell);
    return grid.outline[cell] || !(tone >= leastTone) ? Number.NaN : printed / tone - 1;
  });
}

/** Cells to so many mm. */
export function cellsOf(mm: number): number {
  return Math.round(mm / cellMm);
}
