import type { CoverageRaster } from '../coverageRaster.ts';

/** A raster's coverage as means over squares of 1 mm, 0..1, read between them. */
export function coarseTone(raster: CoverageRaster): (xMm: number, yMm: number) => number {
  const { columns, rows, cellsPerMm, originMm, data } = raster;
  const wide = Math.ceil(columns / cellsPerMm);
  const high = Math.ceil(rows / cellsPerMm);
  const sums = new Float32Array(wide * high);
  const counts = new Float32Array(wide * high);
  for (let row = 0; row < rows; row++) {
    const line = Math.floor(row / cellsPerMm) * wide;
    for (let column = 0; column < columns; column++) {
      const at = line + Math.floor(column / cellsPerMm);
      sums[at]! += data[row * columns + column]!;
      counts[at]!++;
    }
  }
  for (let i = 0; i < sums.length; i++) sums[i] = sums[i]! / counts[i]! / 255;
  return (xMm, yMm) => {
    const x = xMm - originMm[0] - 0.5;
    const y = yMm - originMm[1] - 0.5;
    if (!(x >= 0 && y >= 0 && x < wide - 1 && y < high - 1)) return 0;
    const at = Math.floor(y) * wide + Math.floor(x);
    const [fx, fy] = [x - Math.floor(x), y - Math.floor(y)];
    const upper = sums[at]! * (1 - fx) + sums[at + 1]! * fx;
    const lower = sums[at + wide]! * (1 - fx) + sums[at + wide + 1]! * fx;
    return upper * (1 - fy) + lower * fy;
  };
}
