import { medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import type { EvidenceGrid } from './evidenceGrid.ts';

/** A slope over the whole sheet: by which share the print grows darker from edge to edge. */
export interface Plane {
  readonly across: number;
  readonly down: number;
  /** Standard deviations of both. */
  readonly acrossDeviation: number;
  readonly downDeviation: number;
}

/** No slope, and nothing known of it. */
export const noPlane: Plane = { across: 0, down: 0, acrossDeviation: Infinity, downDeviation: Infinity };
/** Cells near one another err together: summed up in blocks of so many cells' side. */
const blockCells = 6;
const fewestBlocks = 12;

interface Block {
  readonly u: number;
  readonly v: number;
  readonly value: number;
  readonly weight: number;
}

/** Factor of a cell's printed tone by the slope, 1 in the middle of the grid, 0.2 or more. */
export function gainAt(plane: Plane, grid: EvidenceGrid, cell: number): number {
  const u = ((cell % grid.columns) + 0.5) / grid.columns - 0.5;
  const v = (Math.floor(cell / grid.columns) + 0.5) / grid.rows - 0.5;
  return Math.max(0.2, 1 + plane.across * u + plane.down * v);
}

const huber = (z: number) => Math.min(1, 1.345 / Math.max(1e-9, Math.abs(z)));
const bisquare = (z: number) => Math.max(0, 1 - (z / 4.685) ** 2) ** 2;
/** Neighbouring blocks of one zone err together: our rule. */
const togetherBlocks = 3;

/**
 * A plane through relative residuals by blocks, far ones counting less, at last nothing (Huber 1964, doi
 * 10.1214/aoms/1177703732; Beaton & Tukey 1974, doi 10.1080/00401706.1974.10489171).
 */
export function planeThrough(grid: EvidenceGrid, relative: Float32Array, tones: Float32Array): Plane {
  const blocks = blocksOf(grid, relative, tones);
  if (blocks.length < fewestBlocks) return noPlane;
  let weights = blocks.map(({ weight }) => weight);
  let fit = [0, 0, 0];
  let spread = 0;
  for (let round = 0; round < 6; round++) {
    const solved = solvedPlane(blocks, weights);
    if (!solved) return noPlane;
    fit = solved;
    const off = blocks.map(({ u, v, value }) => value - fit[0]! - fit[1]! * u - fit[2]! * v);
    spread = Math.max(0.004, medianAbsoluteDeviation(off));
    const bent = round < 3 ? huber : bisquare;
    weights = blocks.map(({ weight }, i) => weight * bent(off[i]! / spread));
  }
  const moment = (pick: (block: Block) => number) => {
    let [sum, squares, total] = [0, 0, 0];
    for (const [i, block] of blocks.entries()) {
      sum += weights[i]! * pick(block);
      squares += weights[i]! * pick(block) ** 2;
      total += weights[i]!;
    }
    return squares / total - (sum / total) ** 2;
  };
  const effective = weights.reduce((sum, w) => sum + w, 0) ** 2 / weights.reduce((sum, w) => sum + w * w, 0);
  const deviation = (pick: (block: Block) => number) =>
    spread * Math.sqrt(togetherBlocks / Math.max(1e-9, effective * moment(pick)));
  return {
    across: fit[1]!,
    down: fit[2]!,
    acrossDeviation: deviation(({ u }) => u),
    downDeviation: deviation(({ v }) => v),
  };
}

/** Level and both slopes by Cramer's rule: places run from −½ to ½, so that the equations are well set. */
function solvedPlane(blocks: readonly Block[], weights: readonly number[]): number[] | null {
  let [w, u, v, uu, uv, vv, z, uz, vz] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const [i, block] of blocks.entries()) {
    const weight = weights[i]!;
    w += weight;
    u += weight * block.u;
    v += weight * block.v;
    uu += weight * block.u * block.u;
    uv += weight * block.u * block.v;
    vv += weight * block.v * block.v;
    z += weight * block.value;
    uz += weight * block.u * block.value;
    vz += weight * block.v * block.value;
  }
  // Moments about the mean place.
  const [a, b, c] = [uu - (u * u) / w, uv - (u * v) / w, vv - (v * v) / w];
  const [d, e] = [uz - (u * z) / w, vz - (v * z) / w];
  const determinant = a * c - b * b;
  if (!(determinant > 1e-9 * w * w)) return null;
  const [across, down] = [(c * d - b * e) / determinant, (a * e - b * d) / determinant];
  return [(z - across * u - down * v) / w, across, down];
}

function blocksOf(grid: EvidenceGrid, relative: Float32Array, tones: Float32Array): Block[] {
  const blocks: Block[] = [];
  for (let top = 0; top < grid.rows; top += blockCells) {
    for (let left = 0; left < grid.columns; left += blockCells) {
      let [sum, total, u, v] = [0, 0, 0, 0];
      for (let row = top; row < Math.min(grid.rows, top + blockCells); row++) {
        for (let column = left; column < Math.min(grid.columns, left + blockCells); column++) {
          const cell = row * grid.columns + column;
          const value = relative[cell]!;
          if (Number.isNaN(value)) continue;
          const weight = Math.min(1, tones[cell]! / 0.4) ** 2;
          sum += weight * Math.max(-1, Math.min(1, value));
          u += weight * ((column + 0.5) / grid.columns - 0.5);
          v += weight * ((row + 0.5) / grid.rows - 0.5);
          total += weight;
        }
      }
      if (total > 0.5)
        blocks.push({ u: u / total, v: v / total, value: sum / total, weight: Math.min(8, total) });
    }
  }
  return blocks;
}
