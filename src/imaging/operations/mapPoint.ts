import type { Point } from '../../science/geometry/point.ts';
import type { PlaneMap, Stretch } from '../planeMap.ts';
import type { Frame } from '../raster.ts';

/** Pixels of a row between exact evaluations of the stretch, which is close to straight between them. */
const knotSpacingPx = 8;

/**
 * Catmull–Rom weights of the four nodes around a place (Catmull & Rom 1974, doi 10.1016/B978-0-12-079050-0.50020-5).
 * They pass through the nodes, and keep a straight line straight.
 */
function cubicWeights(t: number, weights: Float64Array): void {
  const t2 = t * t;
  const t3 = t2 * t;
  weights[0] = 0.5 * (-t3 + 2 * t2 - t);
  weights[1] = 0.5 * (3 * t3 - 5 * t2 + 2);
  weights[2] = 0.5 * (-3 * t3 + 4 * t2 + t);
  weights[3] = 0.5 * (t3 - t2);
}

/** Node `index` of a line of `count` nodes that start at `start`, `stride` apart; straight on beyond both ends. */
function nodeAt(
  nodes: ArrayLike<number>,
  start: number,
  stride: number,
  count: number,
  index: number,
): number {
  if (count === 1) return nodes[start]!;
  if (index < 0) {
    const end = nodes[start]!;
    return end + (end - nodes[start + stride]!) * -index;
  }
  if (index >= count) {
    const end = nodes[start + (count - 1) * stride]!;
    return end + (end - nodes[start + (count - 2) * stride]!) * (index - count + 1);
  }
  return nodes[start + index * stride]!;
}

/** Base node for a place in node units: the last cell goes on beyond the grid, where the line is straight. */
function baseNode(place: number, count: number): number {
  return Math.max(0, Math.min(count - 2, Math.floor(place)));
}

/** Value of one line of nodes at a place in node units; beyond the ends the last slope goes on. */
function alongLine(
  nodes: ArrayLike<number>,
  start: number,
  stride: number,
  count: number,
  place: number,
  weights: Float64Array,
): number {
  if (count === 1) return nodes[start]!;
  if (place < 0) return nodes[start]! + (nodes[start + stride]! - nodes[start]!) * place;
  if (place > count - 1) {
    const end = nodes[start + (count - 1) * stride]!;
    return end + (end - nodes[start + (count - 2) * stride]!) * (place - count + 1);
  }
  const base = baseNode(place, count);
  cubicWeights(place - base, weights);
  let sum = 0;
  for (let k = 0; k < 4; k++) sum += weights[k]! * nodeAt(nodes, start, stride, count, base + k - 1);
  return sum;
}

/**
 * Displacement in mm at a place in stone mm: bicubic between nodes, straight on beyond the grid.
 */
export function stretchAt(stretch: Stretch, [xMm, yMm]: Point): Point {
  const weights = new Float64Array(4);
  const line = stretchLine(stretch, yMm);
  const place = (xMm - stretch.originMm[0]) / stretch.stepMm;
  return [
    alongLine(line.dx, 0, 1, stretch.columns, place, weights),
    alongLine(line.dy, 0, 1, stretch.columns, place, weights),
  ];
}

/** The stretch of one horizontal line: what its columns of nodes come to at that height. */
function stretchLine(stretch: Stretch, yMm: number): { dx: Float64Array; dy: Float64Array } {
  const weights = new Float64Array(4);
  const { columns, rows } = stretch;
  const place = (yMm - stretch.originMm[1]) / stretch.stepMm;
  const dx = new Float64Array(columns);
  const dy = new Float64Array(columns);
  for (let column = 0; column < columns; column++) {
    dx[column] = alongLine(stretch.dxMm, column, columns, rows, place, weights);
    dy[column] = alongLine(stretch.dyMm, column, columns, rows, place, weights);
  }
  return { dx, dy };
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

/**
 * Carries the pixel centres of one row of a frame to photograph px, into `outX` and `outY` (length ≥ frame.widthPx).
 * Between knots eight pixels apart the stretch is taken as straight: under 1e-4 mm for a stretch that bends over ≥ 30 mm.
 */
export function mapRow(
  map: PlaneMap,
  frame: Frame,
  row: number,
  outX: Float32Array | Float64Array,
  outY: typeof outX,
): void {
  const h = map.homography;
  const [h0, h1, h2, h3, h4, h5, h6, h7, h8] = h as number[] as [
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
  const stepMm = 1 / frame.pxPerMm;
  const startMm = frame.originMm[0] + 0.5 * stepMm;
  const yMm = frame.originMm[1] + (row + 0.5) * stepMm;
  const stretch = map.stretch;
  if (!stretch) {
    for (let i = 0; i < frame.widthPx; i++) {
      const x = startMm + i * stepMm;
      const w = 1 / (h6 * x + h7 * yMm + h8);
      outX[i] = (h0 * x + h1 * yMm + h2) * w;
      outY[i] = (h3 * x + h4 * yMm + h5) * w;
    }
    return;
  }
  const line = stretchLine(stretch, yMm);
  const weights = new Float64Array(4);
  const knotAt = (nodes: Float64Array, i: number): number =>
    alongLine(
      nodes,
      0,
      1,
      stretch.columns,
      (startMm + i * stepMm - stretch.originMm[0]) / stretch.stepMm,
      weights,
    );
  let dx = knotAt(line.dx, 0);
  let dy = knotAt(line.dy, 0);
  for (let from = 0; from < frame.widthPx; from += knotSpacingPx) {
    const nextDx = knotAt(line.dx, from + knotSpacingPx);
    const nextDy = knotAt(line.dy, from + knotSpacingPx);
    const slopeX = (nextDx - dx) / knotSpacingPx;
    const slopeY = (nextDy - dy) / knotSpacingPx;
    const to = Math.min(frame.widthPx, from + knotSpacingPx);
    for (let i = from; i < to; i++) {
      const x = startMm + i * stepMm + dx + slopeX * (i - from);
      const y = yMm + dy + slopeY * (i - from);
      const w = 1 / (h6 * x + h7 * y + h8);
      outX[i] = (h0 * x + h1 * y + h2) * w;
      outY[i] = (h3 * x + h4 * y + h5) * w;
    }
    dx = nextDx;
    dy = nextDy;
  }
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
