import type { Point } from '../science/geometry/point.ts';

/** A smooth displacement of stone mm on a regular grid that covers the frame; bicubic between nodes. */
export interface Stretch {
  readonly columns: number;
  readonly rows: number;
  readonly stepMm: number;
  /** Stone mm of node (0, 0). */
  readonly originMm: Point;
  /** Displacement in mm at the nodes, row by row. */
  readonly dxMm: Float32Array;
  readonly dyMm: Float32Array;
}

/**
 * From stone mm to photograph px (pixel centres at +0.5): px = H · (mm + stretch(mm)).
 * Plain data, so that it passes between threads.
 */
export interface PlaneMap {
  /** Row-major 3×3, h33 = 1. */
  readonly homography: readonly number[];
  readonly stretch: Stretch | null;
}
