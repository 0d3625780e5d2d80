import { normalDraw, type Random } from '../../foundation/random.ts';

/** Smooth random values on a regular raster, zero mean and unit variance; `cellsPerMm` says how fine. */
export interface NoiseField {
  readonly columns: number;
  readonly rows: number;
  readonly cellsPerMm: number;
  readonly data: Float32Array;
}

/** Weights of the uniform cubic B-spline at fraction `t` between two nodes. */
function splineWeights(t: number): readonly [number, number, number, number] {
  const u = 1 - t;
  return [u ** 3 / 6, (3 * t ** 3 - 6 * t * t + 4) / 6, (3 * u ** 3 - 6 * u * u + 4) / 6, t ** 3 / 6];
}

/**
 * Sums smooth lattice noise over several feature sizes.
 * `scales` pairs a feature size in mm with a weight; the sum is brought to zero mean and unit variance.
 */
export function noiseField(
  random: Random,
  columns: number,
  rows: number,
  cellsPerMm: number,
  scales: readonly (readonly [sizeMm: number, weight: number])[],
): NoiseField {
  const data = new Float32Array(columns * rows);
  for (const [sizeMm, weight] of scales) addLattice(data, columns, rows, sizeMm * cellsPerMm, weight, random);
  let mean = 0;
  for (const value of data) mean += value;
  mean /= data.length;
  let variance = 0;
  for (const value of data) variance += (value - mean) ** 2;
  const gain = 1 / Math.sqrt(variance / data.length || 1);
  for (let i = 0; i < data.length; i++) data[i] = (data[i]! - mean) * gain;
  return { columns, rows, cellsPerMm, data };
}

/** The lattice closes on itself, so that the field repeats without a seam; feature sizes give way a little for that. */
function addLattice(
  data: Float32Array,
  columns: number,
  rows: number,
  step: number,
  weight: number,
  random: Random,
): void {
  const nodeColumns = Math.max(1, Math.round(columns / step));
  const nodeRows = Math.max(1, Math.round(rows / step));
  const nodes = new Float32Array(nodeColumns * nodeRows);
  for (let i = 0; i < nodes.length; i++) nodes[i] = normalDraw(random) * weight;
  const across = Array.from({ length: columns }, (_, x) => {
    const place = (x / columns) * nodeColumns;
    const node = Math.floor(place);
    return {
      nodes: [0, 1, 2, 3].map((k) => (node + k) % nodeColumns),
      weights: splineWeights(place - node),
    };
  });
  const line = new Float32Array(nodeColumns);
  for (let y = 0; y < rows; y++) {
    const place = (y / rows) * nodeRows;
    const node = Math.floor(place);
    const down = splineWeights(place - node);
    for (let i = 0; i < nodeColumns; i++) {
      let sum = 0;
      for (let k = 0; k < 4; k++) sum += down[k]! * nodes[((node + k) % nodeRows) * nodeColumns + i]!;
      line[i] = sum;
    }
    for (let x = 0; x < columns; x++) {
      const { nodes: near, weights } = across[x]!;
      data[y * columns + x]! +=
        weights[0] * line[near[0]!]! +
        weights[1] * line[near[1]!]! +
        weights[2] * line[near[2]!]! +
        weights[3] * line[near[3]!]!;
    }
  }
}

/** Bilinear value at (xMm, yMm) from the field's corner; the field repeats beyond its edges. */
export function noiseAt(field: NoiseField, xMm: number, yMm: number): number {
  const { columns, rows, data } = field;
  const x = xMm * field.cellsPerMm;
  const y = yMm * field.cellsPerMm;
  const left = Math.floor(x);
  const top = Math.floor(y);
  const fx = x - left;
  const fy = y - top;
  const x0 = ((left % columns) + columns) % columns;
  const y0 = ((top % rows) + rows) % rows;
  const x1 = x0 + 1 === columns ? 0 : x0 + 1;
  const y1 = y0 + 1 === rows ? 0 : y0 + 1;
  const upper = data[y0 * columns + x0]! * (1 - fx) + data[y0 * columns + x1]! * fx;
  const lower = data[y1 * columns + x0]! * (1 - fx) + data[y1 * columns + x1]! * fx;
  return upper * (1 - fy) + lower * fy;
}
