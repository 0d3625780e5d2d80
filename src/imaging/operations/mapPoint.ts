import type { Point } from '../../science/geometry/point.ts';
import type { PlaneMap, Stretch } from '../planeMap.ts';
import type { Frame } from '../raster.ts';

/** Pixels of a row between exact evaluations of the stretch, which is close to straight between them. */
const knotSpacingPx = 8;

/** How a place on a line of nodes is made of them: weights of `count` nodes from `first` on. */
interface NodeWeights {
  readonly first: number;
  readonly count: number;
  readonly weights: Float64Array;
}

/**
 * Catmull–Rom weights of the nodes around a place (Catmull & Rom 1974, doi 10.1016/B978-0-12-079050-0.50020-5).
 * They pass through the nodes and keep a straight line straight; beyond the ends the last slope goes on.
 * @param place in node units
 */
function nodeWeights(place: number, nodes: number): NodeWeights {
  const count = Math.min(4, nodes);
  const weights = new Float64Array(count);
  if (nodes === 1) {
    weights[0] = 1;
    return { first: 0, count, weights };
  }
  const base = Math.max(0, Math.min(nodes - 2, Math.floor(place)));
  const first = Math.max(0, Math.min(nodes - count, base - 1));
  const add = (node: number, weight: number): void => {
    weights[node - first]! += weight;
  };
  const t = place - base;
  if (t < 0 || t > 1) {
    add(base, 1 - t);
    add(base + 1, t);
    return { first, count, weights };
  }
  const t2 = t * t;
  const t3 = t2 * t;
  const before = 0.5 * (-t3 + 2 * t2 - t);
  const after = 0.5 * (t3 - t2);
  add(base, 0.5 * (3 * t3 - 5 * t2 + 2));
  add(base + 1, 0.5 * (-3 * t3 + 4 * t2 + t));
  if (base > 0) add(base - 1, before);
  else {
    add(0, 2 * before);
    add(1, -before);
  }
  if (base + 2 < nodes) add(base + 2, after);
  else {
    add(nodes - 1, 2 * after);
    add(nodes - 2, -after);
  }
  return { first, count, weights };
}

/** What a line of nodes comes to under some weights. */
function weighted(nodes: Float64Array, { first, count, weights }: NodeWeights): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += weights[k]! * nodes[first + k]!;
  return sum;
}

/** What the columns of a grid of nodes come to under weights of its rows, into `line`. */
function collapseRows(grid: Float32Array, columns: number, rows: NodeWeights, line: Float64Array): void {
  line.fill(0);
  for (let k = 0; k < rows.count; k++) {
    const weight = rows.weights[k]!;
    const start = (rows.first + k) * columns;
    for (let column = 0; column < columns; column++) line[column]! += weight * grid[start + column]!;
  }
}

/**
 * Displacement in mm at a place in stone mm: bicubic between nodes, straight on beyond the grid.
 */
export function stretchAt(stretch: Stretch, [xMm, yMm]: Point): Point {
  const { columns, stepMm, originMm } = stretch;
  const across = nodeWeights((xMm - originMm[0]) / stepMm, columns);
  const down = nodeWeights((yMm - originMm[1]) / stepMm, stretch.rows);
  let dx = 0;
  let dy = 0;
  for (let j = 0; j < down.count; j++) {
    for (let k = 0; k < across.count; k++) {
      const weight = down.weights[j]! * across.weights[k]!;
      const at = (down.first + j) * columns + across.first + k;
      dx += weight * stretch.dxMm[at]!;
      dy += weight * stretch.dyMm[at]!;
    }
  }
  return [dx, dy];
}

/** Carries a place in stone mm to photograph px (pixel centres at +0.5). */
export function mapPoint(map: PlaneMap, stoneMm: Point): Point {
  const h = map.homography;
  const [dx, dy] = map.stretch ? stretchAt(map.stretch, stoneMm) : [0, 0];
  const x = stoneMm[0] + dx;
  const y = stoneMm[1] + dy;
  const w = h[6]! * x + h[7]! * y + h[8]!;
  return [(h[0]! * x + h[1]! * y + h[2]!) / w, (h[3]! * x + h[4]! * y + h[5]!) / w];
}

/** Carries the pixel centres of a row of a frame to photograph px, into arrays at least as long as the row. */
export type RowMapper = (row: number, outX: Float64Array, outY: Float64Array) => void;

/**
 * Prepares carrying a frame's rows to photograph px. Between knots eight pixels apart the stretch is taken as
 * straight: under 1e-4 mm off for a stretch that bends over ≥ 30 mm.
 */
export function rowMapper(map: PlaneMap, frame: Frame): RowMapper {
  const [h0, h1, h2, h3, h4, h5, h6, h7, h8] = map.homography as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const width = frame.widthPx;
  const stepMm = 1 / frame.pxPerMm;
  const startMm = frame.originMm[0] + 0.5 * stepMm;
  const yOf = (row: number): number => frame.originMm[1] + (row + 0.5) * stepMm;
  const stretch = map.stretch;
  if (!stretch) {
    return (row, outX, outY) => {
      const yMm = yOf(row);
      for (let i = 0; i < width; i++) {
        const x = startMm + i * stepMm;
        const w = 1 / (h6 * x + h7 * yMm + h8);
        outX[i] = (h0 * x + h1 * yMm + h2) * w;
        outY[i] = (h3 * x + h4 * yMm + h5) * w;
      }
    };
  }
  const knots = Array.from({ length: Math.ceil(width / knotSpacingPx) + 1 }, (_, knot) =>
    nodeWeights(
      (startMm + knot * knotSpacingPx * stepMm - stretch.originMm[0]) / stretch.stepMm,
      stretch.columns,
    ),
  );
  const lineX = new Float64Array(stretch.columns);
  const lineY = new Float64Array(stretch.columns);
  return (row, outX, outY) => {
    const yMm = yOf(row);
    const down = nodeWeights((yMm - stretch.originMm[1]) / stretch.stepMm, stretch.rows);
    collapseRows(stretch.dxMm, stretch.columns, down, lineX);
    collapseRows(stretch.dyMm, stretch.columns, down, lineY);
    let dx = weighted(lineX, knots[0]!);
    let dy = weighted(lineY, knots[0]!);
    for (let from = 0, knot = 1; from < width; from += knotSpacingPx, knot++) {
      const slopeX = (weighted(lineX, knots[knot]!) - dx) / knotSpacingPx;
      const slopeY = (weighted(lineY, knots[knot]!) - dy) / knotSpacingPx;
      const to = Math.min(width, from + knotSpacingPx);
      for (let i = from; i < to; i++) {
        const x = startMm + i * stepMm + dx + slopeX * (i - from);
        const y = yMm + dy + slopeY * (i - from);
        const w = 1 / (h6 * x + h7 * y + h8);
        outX[i] = (h0 * x + h1 * y + h2) * w;
        outY[i] = (h3 * x + h4 * y + h5) * w;
      }
      dx += slopeX * knotSpacingPx;
      dy += slopeY * knotSpacingPx;
    }
  };
}

/**
 * Photograph px per frame px, the larger of both directions, at the frame's middle.
 */
export function photographPxPerFramePx(map: PlaneMap, frame: Frame): number {
  const step = 1 / frame.pxPerMm;
  const x = frame.originMm[0] + (frame.widthPx / 2) * step;
  const y = frame.originMm[1] + (frame.heightPx / 2) * step;
  const here = mapPoint(map, [x, y]);
  const right = mapPoint(map, [x + step, y]);
  const below = mapPoint(map, [x, y + step]);
  return Math.max(
    Math.hypot(right[0] - here[0], right[1] - here[1]),
    Math.hypot(below[0] - here[0], below[1] - here[1]),
  );
}
