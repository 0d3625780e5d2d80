import type { Point } from '../../science/geometry/point.ts';
import type { Raster } from '../raster.ts';

/** Side of a cell: twice the maps' smoothing. */
export const cellMm = 2;
/** Drawn coverage up to which a cell counts as bare, the stone's mottle allowed for. */
export const bareUpTo = 0.025;
/** A cell in which drawn coverage varies by more lies on an outline. */
const outlineRange = 0.22;
/** Cells with less of them read are left out. */
const leastRead = 0.75;

/** Drawn and printed coverage in cells of 2 mm; NaN where either could not be read. */
export interface EvidenceGrid {
  readonly columns: number;
  readonly rows: number;
  readonly drawn: Float32Array;
  readonly printed: Float32Array;
  /** Standard deviation of the bare level there. */
  readonly deviation: Float32Array;
  /** 1 where an outline of the drawing runs through the cell or touches it. */
  readonly outline: Uint8Array;
}

/** A map of coverage with its standard deviation. */
export type CoverageWithDoubt = Raster & { readonly deviation: Float32Array };

/**
 * Sums two coverage maps over the same work rectangle up in cells. With `across`, x and y are exchanged, so that the stone
 * always travels down the grid.
 */
export function evidenceGrid(
  drawn: CoverageWithDoubt,
  printed: CoverageWithDoubt,
  across: boolean,
): EvidenceGrid {
  const step = Math.round(cellMm * drawn.pxPerMm);
  const wide = Math.floor(drawn.widthPx / step);
  const high = Math.floor(drawn.heightPx / step);
  const [columns, rows] = across ? [high, wide] : [wide, high];
  const grid: EvidenceGrid = {
    columns,
    rows,
    drawn: new Float32Array(wide * high).fill(Number.NaN),
    printed: new Float32Array(wide * high).fill(Number.NaN),
    deviation: new Float32Array(wide * high).fill(Number.NaN),
    outline: new Uint8Array(wide * high),
  };
  for (let row = 0; row < high; row++)
    for (let column = 0; column < wide; column++)
      fillCell(
        grid,
        drawn,
        printed,
        [column, row],
        step,
        across ? column * columns + row : row * columns + column,
      );
  return grid;
}

function fillCell(
  grid: EvidenceGrid,
  drawn: CoverageWithDoubt,
  printed: CoverageWithDoubt,
  [column, row]: Point,
  step: number,
  cell: number,
): void {
  let [d, p, doubt, count] = [0, 0, 0, 0];
  let [least, most] = [Infinity, -Infinity];
  for (let y = row * step - 1; y <= (row + 1) * step; y++) {
    if (y < 0 || y >= drawn.heightPx) continue;
    for (let x = column * step - 1; x <= (column + 1) * step; x++) {
      if (x < 0 || x >= drawn.widthPx) continue;
      const i = y * drawn.widthPx + x;
      const value = drawn.data[i]!;
      if (Number.isNaN(value) || Number.isNaN(printed.data[i]!)) continue;
      if (value < least) least = value;
      if (value > most) most = value;
      const own = y >= row * step && y < (row + 1) * step && x >= column * step && x < (column + 1) * step;
      if (!own) continue;
      d += value;
      p += printed.data[i]!;
      doubt += printed.deviation[i] || 0.01;
      count++;
    }
  }
  if (count < leastRead * step * step) return;
  grid.drawn[cell] = d / count;
  grid.printed[cell] = p / count;
  grid.deviation[cell] = doubt / count;
  grid.outline[cell] = most - least > outlineRange ? 1 : 0;
}
