import type { Point } from '../../science/geometry/point.ts';
import type { Frame } from '../raster.ts';

/** A window of a frame with the distance in mm of every pixel centre from a polygon's outline, negative inside. */
export interface DistanceWindow {
  readonly left: number;
  readonly top: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly distanceMm: Float32Array;
}

/**
 * Distance of pixel centres from a simple polygon, over its bounding box and a margin, clipped to the frame.
 * @param polygonMm stone mm, at least three points.
 * @param marginMm how far round the outline the window reaches, 0 or more.
 */
export function signedDistance(polygonMm: readonly Point[], frame: Frame, marginMm: number): DistanceWindow {
  const { pxPerMm, originMm } = frame;
  const points = polygonMm.map(([x, y]): Point => [(x - originMm[0]) * pxPerMm, (y - originMm[1]) * pxPerMm]);
  const margin = marginMm * pxPerMm + 1;
  const clamp = (value: number, most: number) => Math.min(Math.max(value, 0), most);
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  const left = clamp(Math.floor(Math.min(...xs) - margin), frame.widthPx);
  const right = clamp(Math.ceil(Math.max(...xs) + margin), frame.widthPx);
  const top = clamp(Math.floor(Math.min(...ys) - margin), frame.heightPx);
  const bottom = clamp(Math.ceil(Math.max(...ys) + margin), frame.heightPx);
  const widthPx = right - left;
  const heightPx = bottom - top;
  const distanceMm = new Float32Array(widthPx * heightPx);
  const edges = edgesOf(points);
  for (let y = 0, i = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, i++) {
      distanceMm[i] = distanceTo(edges, left + x + 0.5, top + y + 0.5) / pxPerMm;
    }
  }
  return { left, top, widthPx, heightPx, distanceMm };
}

/** Share of each pixel that lies within the outline grown by `growMm` (negative: shrunk), 0..1. */
export function shareWithin(window: DistanceWindow, growMm: number, pxPerMm: number): Float32Array {
  return window.distanceMm.map((distance) => Math.min(1, Math.max(0, 0.5 + (growMm - distance) * pxPerMm)));
}

const edgeNumbers = 5;

/** Each edge as where it ends, the way back to where it begins, and its squared length: one flat list is read far faster. */
function edgesOf(points: readonly Point[]): Float64Array {
  return Float64Array.from(
    points.flatMap(([bx, by], i) => {
      const [ax, ay] = points.at(i - 1)!;
      return [bx, by, ax - bx, ay - by, (ax - bx) ** 2 + (ay - by) ** 2];
    }),
  );
}

function distanceTo(edges: Float64Array, x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  let inside = false;
  for (let at = 0; at < edges.length; at += edgeNumbers) {
    const fromX = x - edges[at]!;
    const fromY = y - edges[at + 1]!;
    const dx = edges[at + 2]!;
    const dy = edges[at + 3]!;
    const length2 = edges[at + 4]!;
    const along = length2 === 0 ? 0 : Math.min(1, Math.max(0, (fromX * dx + fromY * dy) / length2));
    const px = fromX - along * dx;
    const py = fromY - along * dy;
    least = Math.min(least, px * px + py * py);
    if (fromY < 0 !== fromY - dy < 0 && fromX < (dx * fromY) / dy) inside = !inside;
  }
  return inside ? -Math.sqrt(least) : Math.sqrt(least);
}
