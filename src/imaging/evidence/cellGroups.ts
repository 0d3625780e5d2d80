import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { containsPoint } from '../../science/geometry/polygon.ts';
import { cellMm, type EvidenceGrid } from './evidenceGrid.ts';

/** Which medium each cell was drawn in, as a small number: 0 where no zone says. Media print by curves of their own. */
export function cellGroups(grid: EvidenceGrid, zones: readonly Zone[], across: boolean): Uint8Array {
  const groups = new Uint8Array(grid.drawn.length);
  const media = [...new Set(zones.map(({ medium }) => medium))].slice(0, 200);
  for (const zone of zones) {
    if (zone.medium === 'blank' || (zone.intention ?? 'drawn') !== 'drawn') continue;
    const outline = across ? zone.polygonMm.map(([x, y]): Point => [y, x]) : zone.polygonMm;
    const along = (axis: 0 | 1) => outline.map((point) => point[axis] / cellMm);
    const [xs, ys] = [along(0), along(1)];
    const from = (values: readonly number[]) => Math.max(0, Math.floor(Math.min(...values)));
    const to = (values: readonly number[], most: number) => Math.min(most, Math.ceil(Math.max(...values)));
    for (let row = from(ys); row < to(ys, grid.rows); row++)
      for (let column = from(xs); column < to(xs, grid.columns); column++)
        if (containsPoint(outline, [(column + 0.5) * cellMm, (row + 0.5) * cellMm]))
          groups[row * grid.columns + column] = 1 + media.indexOf(zone.medium);
  }
  return groups;
}
