import type { Point } from '../../science/geometry/point.ts';
import type { CoverageRaster } from './coverageRaster.ts';
import type { PaintedPair } from './paintPair.ts';

interface Share {
  readonly sure: number;
  readonly sureOrMaybe: number;
}

/** 8-bit maps over the work rectangle at 2 cells a mm: 255 surely, 128 a matter of definition, 0 surely not. */
export interface TruthMaps {
  readonly columns: number;
  readonly rows: number;
  readonly lost: Uint8Array;
  readonly filled: Uint8Array;
  readonly scum: Uint8Array;
  /** Coverage × 255, smoothed with σ 1 mm. */
  readonly drawn: Uint8Array;
  readonly printed: Uint8Array;
  readonly areas: { readonly lost: Share; readonly filled: Share; readonly scum: Share };
}

const cellsPerMm = 2;
const sigmaCells = 2;
/** A blot this small (mm²) may be reported or not. */
const smallestSureMm2 = 18;

/**
 * Applies narrow limits (surely) and wide ones (maybe) about the definitions of lost, filled and scum
 * to coverage smoothed with σ 1 mm. Blots under 18 mm² are never sure. Uncovered cells are 0.
 */
export function changeMaps(painted: PaintedPair, sizeMm: Point, covered: Uint8Array): TruthMaps {
  const columns = Math.round(sizeMm[0] * cellsPerMm);
  const rows = Math.round(sizeMm[1] * cellsPerMm);
  const d = smoothedMeans(painted.stone, columns, rows);
  const p = smoothedMeans(painted.print, columns, rows);
  const map = (sure: (d: number, p: number) => boolean, maybe: (d: number, p: number) => boolean) => {
    const result = Uint8Array.from(d, (drawn, i) =>
      covered[i] === 0 ? 0 : sure(drawn, p[i]!) ? 255 : maybe(drawn, p[i]!) ? 128 : 0,
    );
    demoteSmallBlots(result, columns, rows);
    return result;
  };
  const lost = map(
    (drawn, printed) => drawn >= 0.12 && printed <= 0.3 * drawn,
    (drawn, printed) => drawn >= 0.07 && printed <= 0.5 * drawn + 0.01,
  );
  const filled = map(
    (drawn, printed) => drawn >= 0.12 && drawn <= 0.82 && printed >= 0.95,
    (drawn, printed) => drawn >= 0.06 && drawn <= 0.9 && printed >= 0.89,
  );
  const scum = map(
    (drawn, printed) => drawn <= 0.012 && printed >= 0.055,
    (drawn, printed) => drawn <= 0.05 && printed >= 0.025 + drawn,
  );
  const bytes = (plane: Float32Array) => Uint8Array.from(plane, (value) => Math.round(value * 255));
  const total = covered.reduce((sum, cell) => sum + cell, 0) || 1;
  const share = (plane: Uint8Array): Share => ({
    sure: plane.filter((cell) => cell === 255).length / total,
    sureOrMaybe: plane.filter((cell) => cell > 0).length / total,
  });
  const areas = { lost: share(lost), filled: share(filled), scum: share(scum) };
  return { columns, rows, lost, filled, scum, drawn: bytes(d), printed: bytes(p), areas };
}

/** Means over the map's cells, then a Gaussian of σ 1 mm; the raster's border takes part, so edges are honest. */
function smoothedMeans(raster: CoverageRaster, columns: number, rows: number): Float32Array {
  const block = Math.round(raster.cellsPerMm / cellsPerMm);
  const wideColumns = Math.floor(raster.columns / block);
  const wideRows = Math.floor(raster.rows / block);
  const means = new Float32Array(wideColumns * wideRows);
  for (let row = 0; row < wideRows; row++)
    for (let column = 0; column < wideColumns; column++) {
      let sum = 0;
      for (let j = 0; j < block; j++)
        for (let i = 0; i < block; i++)
          sum += raster.data[(row * block + j) * raster.columns + column * block + i]!;
      means[row * wideColumns + column] = sum / (255 * block * block);
    }
  const radius = 4 * sigmaCells;
  const taps = Array.from({ length: 2 * radius + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - radius) / sigmaCells) ** 2),
  );
  const weight = taps.reduce((sum, tap) => sum + tap, 0);
  const left = Math.round(-raster.originMm[0] * cellsPerMm);
  const top = Math.round(-raster.originMm[1] * cellsPerMm);
  const lines = new Float32Array(columns * wideRows);
  for (let row = 0; row < wideRows; row++)
    for (let column = 0; column < columns; column++) {
      let sum = 0;
      for (let k = -radius; k <= radius; k++)
        sum += taps[k + radius]! * means[row * wideColumns + left + column + k]!;
      lines[row * columns + column] = sum / weight;
    }
  const result = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      let sum = 0;
      for (let k = -radius; k <= radius; k++)
        sum += taps[k + radius]! * lines[(top + row + k) * columns + column]!;
      result[row * columns + column] = sum / weight;
    }
  return result;
}

/** Turns sure blots under the smallest area to maybe (four neighbours make a blot). */
function demoteSmallBlots(map: Uint8Array, columns: number, rows: number): void {
  const seen = new Uint8Array(map.length);
  const least = smallestSureMm2 * cellsPerMm ** 2;
  for (let start = 0; start < map.length; start++) {
    if (map[start] !== 255 || seen[start]) continue;
    const blot = [start];
    seen[start] = 1;
    for (let next = 0; next < blot.length; next++) {
      const cell = blot[next]!;
      const column = cell % columns;
      const neighbours = [
        column > 0 ? cell - 1 : -1,
        column + 1 < columns ? cell + 1 : -1,
        cell - columns,
        cell + columns < columns * rows ? cell + columns : -1,
      ];
      for (const neighbour of neighbours)
        if (neighbour >= 0 && map[neighbour] === 255 && !seen[neighbour]) {
          seen[neighbour] = 1;
          blot.push(neighbour);
        }
    }
    if (blot.length < least) for (const cell of blot) map[cell] = 128;
  }
}
