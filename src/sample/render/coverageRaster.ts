import type { Point } from '../../science/geometry/point.ts';

/** Ink or drawing matter as area, 0..255 for 0..1, in stone orientation over the work rectangle and a border round it. */
export interface CoverageRaster {
  readonly columns: number;
  readonly rows: number;
  readonly cellsPerMm: number;
  /** Stone mm of the raster's top left corner (negative: the border lies outside the work rectangle). */
  readonly originMm: Point;
  readonly data: Uint8Array;
}

/** An empty raster over `sizeMm` with a border of `borderMm` on all sides. */
export function emptyCoverage(sizeMm: Point, borderMm: number, cellsPerMm: number): CoverageRaster {
  const columns = Math.round((sizeMm[0] + 2 * borderMm) * cellsPerMm);
  const rows = Math.round((sizeMm[1] + 2 * borderMm) * cellsPerMm);
  return {
    columns,
    rows,
    cellsPerMm,
    originMm: [-borderMm, -borderMm],
    data: new Uint8Array(columns * rows),
  };
}

/**
 * Coverage as a lens sees it: Gaussian-smoothed with `sigmaCells`, 0..65535 for 0..1.
 * Beyond the raster nothing is drawn.
 */
export function smoothedCoverage(raster: CoverageRaster, sigmaCells: number): Uint16Array {
  const { columns, rows, data } = raster;
  const radius = Math.max(1, Math.ceil(3 * sigmaCells));
  const size = 2 * radius + 1;
  const taps = Float32Array.from({ length: size }, (_, i) =>
    Math.exp(-0.5 * ((i - radius) / sigmaCells) ** 2),
  );
  const sum = taps.reduce((total, tap) => total + tap, 0);
  for (let k = 0; k < size; k++) taps[k]! /= sum;
  const result = new Uint16Array(columns * rows);
  const ring = Array.from({ length: size }, () => new Float32Array(columns));
  const padded = new Float32Array(columns + 2 * radius);
  for (let row = 0; row < rows + radius; row++) {
    const target = ring[row % size]!;
    if (row < rows) {
      for (let x = 0; x < columns; x++) padded[x + radius] = data[row * columns + x]!;
      for (let x = 0; x < columns; x++) {
        let total = 0;
        for (let k = 0; k < size; k++) total += taps[k]! * padded[x + k]!;
        target[x] = total;
      }
    } else target.fill(0);
    const y = row - radius;
    if (y < 0) continue;
    for (let x = 0; x < columns; x++) {
      let total = 0;
      for (let k = 0; k < size; k++) {
        const source = y + k - radius;
        if (source >= 0) total += taps[k]! * ring[source % size]![x]!;
      }
      result[y * columns + x] = Math.min(65535, total * 257 + 0.5);
    }
  }
  return result;
}
