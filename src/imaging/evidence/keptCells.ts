import type { EvidenceCells } from '../../records/evidence.ts';
import { cellMm, type EvidenceGrid } from './evidenceGrid.ts';

/** Side of a kept cell, in cells of the grid: changes between pulls are told over areas, so that coarse ones do. */
const joined = 2;
/** A kept cell rests on at least so many of its cells. */
const fewest = 2;

/** What a later pull is held against, in the stone's own orientation. @param across the grid has x and y exchanged. */
export function keptCells(grid: EvidenceGrid, across: boolean): EvidenceCells {
  const [wide, high] = across ? [grid.rows, grid.columns] : [grid.columns, grid.rows];
  const [columns, rows] = [Math.ceil(wide / joined), Math.ceil(high / joined)];
  const drawn: (number | null)[] = [];
  const printed: (number | null)[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      let [d, p, count] = [0, 0, 0];
      for (let k = 0; k < joined * joined; k++) {
        const [x, y] = [column * joined + (k % joined), row * joined + Math.floor(k / joined)];
        if (x >= wide || y >= high) continue;
        const cell = across ? x * grid.columns + y : y * grid.columns + x;
        if (grid.outline[cell] || Number.isNaN(grid.drawn[cell]! + grid.printed[cell]!)) continue;
        d += grid.drawn[cell]!;
        p += grid.printed[cell]!;
        count++;
      }
      drawn.push(count < fewest ? null : Math.round((100 * d) / count));
      printed.push(count < fewest ? null : Math.round((500 * p) / count));
    }
  return { columns, rows, cellMm: cellMm * joined, drawn, printed };
}

/** Coverage of a kept drawn or printed value. */
export const coverageKept = { drawn: 1 / 100, printed: 1 / 500 } as const;
