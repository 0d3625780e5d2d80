import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedDistance } from '../operations/signedDistance.ts';
import type { Frame } from '../raster.ts';
import { cellKind } from './bareCells.ts';
import type { CellGrid } from './cellGrid.ts';

/** Cells so near to a zone may hold a stray mark or a blurred edge. */
const guardMm = 1.2;

/** Under a wash or a solid no bare ground shows. */
const coversAll: ReadonlySet<string> = new Set(['wash', 'solid', 'tusche-water', 'tusche-spirit']);
const staysBare: ReadonlySet<string> = new Set(['blank', 'stop-out', 'scraped-white']);

/**
 * What is known of each cell from the zones alone: expected bare between them, never bare under washes and solids,
 * unknown in the others, outside beyond the work rectangle. Without zones nothing is known inside.
 */
export function cellKinds(
  grid: CellGrid,
  frame: Frame,
  [widthMm, heightMm]: Point,
  zones: readonly Zone[],
): Uint8Array {
  const cellMm = grid.cellPx / frame.pxPerMm;
  const kinds = new Uint8Array(grid.columns * grid.rows);
  for (let cell = 0; cell < kinds.length; cell++) {
    const x = frame.originMm[0] + ((cell % grid.columns) + 0.5) * cellMm;
    const y = frame.originMm[1] + (Math.floor(cell / grid.columns) + 0.5) * cellMm;
    const inside = x > 0 && y > 0 && x < widthMm && y < heightMm;
    kinds[cell] = inside ? (zones.length > 0 ? cellKind.expectedBare : cellKind.unknown) : cellKind.outside;
  }
  const cellFrame = {
    widthPx: grid.columns,
    heightPx: grid.rows,
    pxPerMm: 1 / cellMm,
    originMm: frame.originMm,
  };
  for (const zone of zones) {
    if (staysBare.has(zone.medium)) continue;
    const covers = coversAll.has(zone.medium);
    const window = signedDistance(zone.polygonMm, cellFrame, guardMm + cellMm);
    for (let i = 0; i < window.distanceMm.length; i++) {
      if (window.distanceMm[i]! >= guardMm) continue;
      const column = window.left + (i % window.widthPx);
      const cell = (window.top + Math.floor(i / window.widthPx)) * grid.columns + column;
      if (kinds[cell] === cellKind.outside || kinds[cell] === cellKind.neverBare) continue;
      kinds[cell] = covers ? cellKind.neverBare : cellKind.unknown;
    }
  }
  return kinds;
}
